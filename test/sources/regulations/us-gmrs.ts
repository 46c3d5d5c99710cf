/*
 * Publisher: Federal Communications Commission, United States.
 * Document: 47 CFR part 95 subpart E (General Mobile Radio Service), text after the reform of 2017.
 * Tables: 95.1763 (frequencies), 95.1767 (power), 95.1773 (bandwidth). Channel numbers are usage:
 * 1 to 22 as in the Family Radio Service (95.563), 23 to 30 for the repeater inputs.
 * Columns: channel, MHz, W at most, measure of the power, kHz at most.
 */

export const gmrsTable: readonly (readonly [
  channel: number,
  mhz: string,
  watts: number,
  measure: string,
  khz: number,
])[] = [
  [1, '462.5625', 5, 'erp', 20],
  [2, '462.5875', 5, 'erp', 20],
  [3, '462.6125', 5, 'erp', 20],
  [4, '462.6375', 5, 'erp', 20],
  [5, '462.6625', 5, 'erp', 20],
  [6, '462.6875', 5, 'erp', 20],
  [7, '462.7125', 5, 'erp', 20],
  [8, '467.5625', 0.5, 'erp', 12.5],
  [9, '467.5875', 0.5, 'erp', 12.5],
  [10, '467.6125', 0.5, 'erp', 12.5],
  [11, '467.6375', 0.5, 'erp', 12.5],
  [12, '467.6625', 0.5, 'erp', 12.5],
  [13, '467.6875', 0.5, 'erp', 12.5],
  [14, '467.7125', 0.5, 'erp', 12.5],
  [15, '462.5500', 50, 'output', 20],
  [16, '462.5750', 50, 'output', 20],
  [17, '462.6000', 50, 'output', 20],
  [18, '462.6250', 50, 'output', 20],
  [19, '462.6500', 50, 'output', 20],
  [20, '462.6750', 50, 'output', 20],
  [21, '462.7000', 50, 'output', 20],
  [22, '462.7250', 50, 'output', 20],
  [23, '467.5500', 50, 'output', 20],
  [24, '467.5750', 50, 'output', 20],
  [25, '467.6000', 50, 'output', 20],
  [26, '467.6250', 50, 'output', 20],
  [27, '467.6500', 50, 'output', 20],
  [28, '467.6750', 50, 'output', 20],
  [29, '467.7000', 50, 'output', 20],
  [30, '467.7250', 50, 'output', 20],
];

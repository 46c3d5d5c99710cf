/*
 * Publisher: Federal Communications Commission, United States.
 * Document: 47 CFR part 95 subpart B (Family Radio Service), text after the reform of 2017.
 * Tables: 95.563 (channels), 95.567 (effective radiated power).
 * Columns: channel, MHz, W ERP at most. Every channel is 12.5 kHz wide (95.573).
 */

export const frsTable: readonly (readonly [channel: number, mhz: string, wattsErp: number])[] = [
  [1, '462.5625', 2],
  [2, '462.5875', 2],
  [3, '462.6125', 2],
  [4, '462.6375', 2],
  [5, '462.6625', 2],
  [6, '462.6875', 2],
  [7, '462.7125', 2],
  [8, '467.5625', 0.5],
  [9, '467.5875', 0.5],
  [10, '467.6125', 0.5],
  [11, '467.6375', 0.5],
  [12, '467.6625', 0.5],
  [13, '467.6875', 0.5],
  [14, '467.7125', 0.5],
  [15, '462.5500', 2],
  [16, '462.5750', 2],
  [17, '462.6000', 2],
  [18, '462.6250', 2],
  [19, '462.6500', 2],
  [20, '462.6750', 2],
  [21, '462.7000', 2],
  [22, '462.7250', 2],
];

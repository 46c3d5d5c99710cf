/*
 * Publisher: Federal Communications Commission, United States.
 * Document: 47 CFR part 95 subpart J (Multi-Use Radio Service): 95.2763, 95.2773.
 * Columns: channel, MHz, kHz at most. Every channel has 2 W at the transmitter (95.2767).
 */

export const mursTable: readonly (readonly [channel: number, mhz: string, khz: number])[] = [
  [1, '151.820', 11.25],
  [2, '151.880', 11.25],
  [3, '151.940', 11.25],
  [4, '154.570', 20.0],
  [5, '154.600', 20.0],
];

/** The path that the benchmark of the loss reckons with. */
export const lossSettings = {
  frequencyHz: 146e6,
  polarization: 'vertical',
  stationAntennaM: 10,
  cellAntennaM: 1.5,
  earthRadiusKm: 8500,
} as const;

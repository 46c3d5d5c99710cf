/**
 * NOAA/NCEI, World Magnetic Model 2025, the twelve test rows of WMM2025_TEST_VALUES.txt: decimal year,
 * height above the ellipsoid (km), latitude, longitude (degrees), horizontal field H (nT), declination D (degrees, east positive).
 */
export const declinations = [
  [2025.0, 0, 80, 0, 6523.2, 1.28],
  [2025.0, 0, 0, 120, 39677.8, -0.16],
  [2025.0, 0, -80, 240, 16898.1, 68.78],
  [2025.0, 100, 80, 0, 6216.7, 0.85],
  [2025.0, 100, 0, 120, 37688.7, -0.15],
  [2025.0, 100, -80, 240, 15917.1, 68.21],
  [2027.5, 0, 80, 0, 6507.5, 2.59],
  [2027.5, 0, 0, 120, 39702.0, -0.24],
  [2027.5, 0, -80, 240, 16908.3, 68.49],
  [2027.5, 100, 80, 0, 6201.1, 2.16],
  [2027.5, 100, 0, 120, 37711.8, -0.23],
  [2027.5, 100, -80, 240, 15927.0, 67.93],
] as const;

/**
 * NOAA/NCEI, World Magnetic Model 2025, seven of the hundred rows of WMM2025_TestValues.txt, as quoted in a public test suite: date of the decimal year,
 * height above the ellipsoid (km), latitude, longitude (degrees), declination D (degrees, east positive).
 */
export const furtherDeclinations = [
  ['2025-01-01', 28, 89, -121, -99.77],
  ['2025-07-02', 6, -36, -137, 20.28],
  ['2026-07-02', 12, 33, -145, 11.96],
  ['2027-01-01', 44, -43, -111, 24.31],
  ['2027-07-02', 8, 62, 53, 19.39],
  ['2028-07-01', 28, 54, -120, 15.43],
  ['2029-07-02', 66, -21, 32, -14.63],
] as const;

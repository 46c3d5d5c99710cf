/**
 * Maidenhead locators with the coordinates they were published for.
 *
 * First four rows: E. Tyson, "Conversion between geodetic and grid locator systems", QST, January 1989,
 * p. 29. Next three: a public test file of a locator library that quotes the same article and adds them.
 * Last two: the origin and the south-west corner, by the definition of the system (IARU Region 1 VHF Managers
 * Handbook). Extended squares (fourth pair) are computed, not published. Degrees, WGS 84.
 */
export const locators = [
  { place: 'Munich', latitudeDeg: 48.14666, longitudeDeg: 11.60833, locator: 'JN58td', extended: 'JN58td25' },
  {
    place: 'Montevideo',
    latitudeDeg: -34.91,
    longitudeDeg: -56.21166,
    locator: 'GF15vc',
    extended: 'GF15vc41',
  },
  {
    place: 'Washington DC',
    latitudeDeg: 38.92,
    longitudeDeg: -77.065,
    locator: 'FM18lw',
    extended: 'FM18lw20',
  },
  {
    place: 'Wellington',
    latitudeDeg: -41.28333,
    longitudeDeg: 174.745,
    locator: 'RE78ir',
    extended: 'RE78ir92',
  },
  {
    place: 'Newington',
    latitudeDeg: 41.714775,
    longitudeDeg: -72.72726,
    locator: 'FN31pr',
    extended: 'FN31pr21',
  },
  {
    place: 'Palo Alto',
    latitudeDeg: 37.413708,
    longitudeDeg: -122.1073236,
    locator: 'CM87wj',
    extended: 'CM87wj79',
  },
  {
    place: 'Chattanooga',
    latitudeDeg: 35.0542,
    longitudeDeg: -85.1142,
    locator: 'EM75kb',
    extended: 'EM75kb63',
  },
  { place: 'origin', latitudeDeg: 0, longitudeDeg: 0, locator: 'JJ00aa', extended: 'JJ00aa00' },
  { place: 'corner', latitudeDeg: -90, longitudeDeg: -180, locator: 'AA00aa', extended: 'AA00aa00' },
] as const;

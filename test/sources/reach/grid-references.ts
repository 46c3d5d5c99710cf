/**
 * UTM coordinates and MGRS references with the geographic coordinates they belong to; WGS 84, metres.
 *
 * 33.3 N 44.4 E: documentation of GeographicLib (C. F. F. Karney), GeoConvert, 38SMB4484 at 1 km. 43°38′33.24″ N
 * 79°23′13.7″ W: the UTM example of public encyclopaedias, 630084 / 4833438. The next three: test
 * values of a public UTM library, 166021 / 0, 808084 / 14385, 683473 / 4942631 (cut, not rounded). Digits
 * beyond those, and the last row (the widened zone 32 in Norway), were computed with Krüger's series to n⁶.
 */
export const gridReferences = [
  {
    latitudeDeg: 33.3,
    longitudeDeg: 44.4,
    zone: 38,
    eastingM: 444140.545,
    northingM: 3684706.356,
    mgrs: '38SMB4414084706',
  },
  {
    latitudeDeg: 43 + 38 / 60 + 33.24 / 3600,
    longitudeDeg: -(79 + 23 / 60 + 13.7 / 3600),
    zone: 17,
    eastingM: 630084.311,
    northingM: 4833438.549,
    mgrs: '17TPJ3008433438',
  },
  { latitudeDeg: 0, longitudeDeg: 0, zone: 31, eastingM: 166021.443, northingM: 0, mgrs: '31NAA6602100000' },
  {
    latitudeDeg: 0.13,
    longitudeDeg: -0.2324,
    zone: 30,
    eastingM: 808084.437,
    northingM: 14385.799,
    mgrs: '30NZF0808414385',
  },
  {
    latitudeDeg: -45.6456,
    longitudeDeg: 23.3545,
    zone: 34,
    eastingM: 683473.747,
    northingM: 4942631.269,
    mgrs: '34GFQ8347342631',
  },
  {
    latitudeDeg: 60.39,
    longitudeDeg: 5.32,
    zone: 32,
    eastingM: 297230.22,
    northingM: 6700510.175,
    mgrs: '32VKN9723000510',
  },
] as const;

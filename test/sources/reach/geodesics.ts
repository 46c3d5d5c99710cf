/**
 * Geodesics on WGS 84. Degrees, metres; azimuths clockwise from north. Published to more digits
 * than are kept here (a micrometre).
 *
 * First five rows: C. F. F. Karney, "Test data for geodesics" (GeodTest.dat, doi 10.5281/zenodo.32156), as used by
 * the tests of GeographicLib. Sixth: T. Vincenty, Survey Review 23 (1975), and the Australian geodetic datum
 * technical manual, Flinders Peak to Buninyong, 54972.271 m, 306°52′05.37″, back 127°10′25.07″. Last: documentation of
 * GeographicLib, New York to Paris airports, given to the metre.
 */
const dms = (degrees: number, minutes: number, seconds: number) => degrees + minutes / 60 + seconds / 3600;

export const geodesics = [
  {
    from: [35.60777, -139.44815],
    to: [-11.17491, -69.95921],
    distanceM: 8935244.560482,
    bearingDeg: 111.09874843,
    finalBearingDeg: 129.28927089,
    withinM: 2e-6,
  },
  {
    from: [55.52454, 106.05087],
    to: [77.03196, 197.18234],
    distanceM: 4105086.171392,
    bearingDeg: 22.020059881,
    finalBearingDeg: 109.112041111,
    withinM: 2e-6,
  },
  {
    from: [-19.79938, -174.47484],
    to: [-11.99349, -154.35109],
    distanceM: 2319004.860117,
    bearingDeg: 71.16727578,
    finalBearingDeg: 65.589099775,
    withinM: 2e-6,
  },
  {
    from: [-68.82867, -74.28391],
    to: [-50.63005, -8.36685],
    distanceM: 3956936.926064,
    bearingDeg: 93.774347763,
    finalBearingDeg: 34.655640854,
    withinM: 2e-6,
  },
  {
    from: [-41.22777, 122.32875],
    to: [-7.57291, 130.37946],
    distanceM: 3812686.035106,
    bearingDeg: 14.285113402,
    finalBearingDeg: 10.805303085,
    withinM: 2e-6,
  },
  {
    from: [-dms(37, 57, 3.7203), dms(144, 25, 29.5244)],
    to: [-dms(37, 39, 10.1561), dms(143, 55, 35.3839)],
    distanceM: 54972.271,
    bearingDeg: dms(306, 52, 5.37),
    finalBearingDeg: dms(307, 10, 25.07),
    withinM: 0.001,
  },
  {
    from: [40.6, -73.8],
    to: [49 + 1 / 60, 2.55],
    distanceM: 5853226,
    bearingDeg: 53.47022,
    finalBearingDeg: 111.59367,
    withinM: 0.6,
  },
] as const;

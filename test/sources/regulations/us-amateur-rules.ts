/*
 * Publisher: Federal Communications Commission, United States.
 * Document: 47 CFR part 97, text of 28 July 2026: 97.205(b), 97.201(b) (barred segments), 97.305(c) (emissions),
 * 97.313 (power). Frequencies in MHz, power in W.
 */

/** 97.205(b): segments of 10 m and up closed to repeaters. */
export const repeaterBarred: readonly (readonly [from: string, to: string])[] = [
  ['28.0', '29.5'],
  ['50.0', '51.0'],
  ['144.0', '144.5'],
  ['145.5', '146.0'],
  ['222.00', '222.15'],
  ['431.0', '433.0'],
  ['435.0', '438.0'],
];

/** 97.201(b): segments of 2 m and up closed to auxiliary stations. */
export const auxiliaryBarred: readonly (readonly [from: string, to: string])[] = [
  ['144.0', '144.5'],
  ['145.8', '146.0'],
  ['219', '220'],
  ['222.00', '222.15'],
  ['431', '433'],
  ['435', '438'],
];

/** 97.305(c) for an Amateur Extra operator: the segment and whether phone, and whether data, is admitted. */
export const phoneAndData: readonly (readonly [from: string, to: string, phone: boolean, data: boolean])[] = [
  ['1.800', '2.000', true, true],
  ['3.500', '3.600', false, true],
  ['3.600', '4.000', true, false],
  ['5.3515', '5.3665', true, true],
  ['7.000', '7.125', false, true],
  ['7.125', '7.300', true, false],
  ['10.100', '10.150', false, true],
  ['14.00', '14.15', false, true],
  ['14.15', '14.35', true, false],
  ['18.068', '18.110', false, true],
  ['18.110', '18.168', true, false],
  ['21.0', '21.2', false, true],
  ['21.20', '21.45', true, false],
  ['24.89', '24.93', false, true],
  ['24.93', '24.99', true, false],
  ['28.0', '28.3', false, true],
  ['28.3', '29.7', true, false],
  ['50.0', '50.1', false, false],
  ['50.1', '54.0', true, true],
  ['144.0', '144.1', false, false],
  ['144.1', '148.0', true, true],
  ['219', '220', false, true],
  ['222', '225', true, true],
  ['420', '450', true, true],
  ['902', '928', true, true],
  ['1240', '1300', true, true],
];

/** 97.313 and 97.203(c): class, frequency, strictest limit and how it is reckoned. Novice figures: edition of 1997. */
export const powers: readonly (readonly [
  operatorClass: string,
  mhz: string,
  watts: number,
  measure: string,
])[] = [
  ['general', '10.125', 200, 'output'],
  ['extra', '10.125', 200, 'output'],
  ['technician', '28.4', 200, 'output'],
  ['general', '28.4', 1500, 'output'],
  ['novice', '3.55', 200, 'output'],
  ['general', '3.55', 1500, 'output'],
  ['technician', '7.05', 200, 'output'],
  ['technician', '21.1', 200, 'output'],
  ['technician', '146.52', 1500, 'output'],
  ['general', '5.348', 100, 'erp'],
  ['general', '5.360', 9.15, 'erp'],
  ['general', '5.3585', 9.15, 'erp'],
  ['technician', '219.5', 50, 'output'],
  ['novice', '223.5', 25, 'output'],
  ['novice', '1280', 5, 'output'],
  ['technician', '446.0', 1500, 'output'],
];

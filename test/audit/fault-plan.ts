/** A plan with a channel of every kind, and the revision before it, from which some radios were never moved on. */

const radios = `
  handheld:
    name: Handheld
    transmits: [144-148, 420-450]
    receives: [136-174, 400-480]
    certified: [amateur]
    memories: 1-128
    name-length: 7
    steps: [5, 6.25, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    modes: [fm]
    powers: { high: 5 W, low: 1 W }
    antenna: { gain: -5 dBd, height: 1.5 m, carried: hand }
    entry-order: [receive, step, offset-direction, offset, tone, receive-tone, width, power, name]
  mobile:
    name: Car radio
    transmits: [144-148, 420-450]
    receives: [118-174, 320-480]
    certified: [amateur]
    memories: 0-199
    name-length: 6
    steps: [5, 6.25, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    modes: [fm, packet]
    powers: { high: 50 W, low: 5 W }
    antenna: { gain: 2.15 dBi, height: 1.8 m, carried: vehicle }
    entry-order: [receive, transmit, tone-kind, tone, width, power, name]
  plain:
    name: Plain set
    transmits: [144-148]
    receives: [136-174]
    certified: [amateur]
    memories: 1-40
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    powers: { high: 25 W, low: 5 W }
    antenna: { gain: 3 dBd, height: 8 m, carried: mast }
    entry-order: [receive, offset-direction, offset, tone]`;

export const faultPlan = `readback: 1
plan: { title: Audited group, revision: 5, effective: 2026-12-01, timezone: America/New_York, rules: us }
radios:${radios}
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld, mobile, plain] }
repeaters:
  gap: { name: Gap, output: 146.940, offset: -0.6, tone: 100.0, width: 25 }
  ridge: { name: Ridge, output: 147.225, offset: 0.6, tone: 131.8, width: 25 }
  mill: { name: Mill, output: 145.370, offset: -0.6, tone: D023N, output-tone: D023N, width: 25 }
  tower: { name: Tower, output: 444.325, offset: 5, tone: 141.3, output-tone: 88.5, width: 25 }
  creek: { name: Creek, output: 443.850, offset: 5, tone: D114I, width: 12.5 }
  pass: { name: Pass, output: 147.390, offset: 0.6, tone: 162.2, output-tone: 107.2, width: 12.5 }
channels:
  1: { name: GAP, repeater: gap }
  2: { name: RIDGE, repeater: ridge }
  3: { name: SIMP 1, simplex: 146.550, width: 25 }
  4: { name: MILL, repeater: mill }
  5: { name: TRAIL, simplex: 146.445, width: 12.5, tone: 123.0, receive-tone: 123.0, power: low }
  6: { name: TOWER, repeater: tower }
  7: { name: CLOSE, simplex: 446.100, width: 12.5, power: low }
  8: { name: CREEK, repeater: creek }
  10: { name: PASS, repeater: pass }
  11: { name: YARD, simplex: 147.570, width: 25, tone: 67.0 }
  12: { name: WX, listen: 162.550 }
  13: { name: RANGERS, listen: 168.350, width: 12.5 }
`;

export const lastFaultPlan = faultPlan
  .replace('revision: 5', 'revision: 4')
  .replace('output: 146.940, offset: -0.6, tone: 100.0', 'output: 146.715, offset: -0.6, tone: 77.0')
  .replace('output: 444.325, offset: 5, tone: 141.3', 'output: 442.175, offset: 5, tone: 186.2')
  .replace('SIMP 1, simplex: 146.550, width: 25', 'DIRECT, simplex: 147.465, width: 12.5')
  .replace('WX, listen: 162.550', 'WX, listen: 162.475');

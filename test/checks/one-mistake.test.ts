/** One slip in a sound plan is one finding: the right one, in the right place, with the right remedy. */
import { describe, expect, test } from 'vitest';
import { findingsOf } from './findings-of.ts';

const gap = (figures: string) =>
  `repeaters:\n  gap: { name: Gap repeater, call: W4XGP, place: hill, width: 25, ${figures} }`;
const simplex = (figures: string) =>
  `channels:\n  1: { name: GAP, repeater: gap }\n  3: { name: SIMP, ${figures} }`;
const family = (figures: string) => `
radios:
  family: { name: Family set, transmits: [462-468], receives: [462-468], certified: [gmrs, frs], memories: 1-30, name-length: 8, steps: [6.25, 12.5], widths: [12.5, 25], tones: [ctcss], powers: { low: 500 mW }, antenna: { gain: -5 dBd, carried: hand } }
members:
  ada: { name: Ada Example, licences: { gmrs: { call: WZZZ401, expires: 2033-01-20 } }, radios: [family], at: base }
  ben: { name: Ben Example, licences: { gmrs: { call: WZZZ402, expires: 2033-01-20 } }, radios: [family], at: base }
repeaters:
  gap: { name: Neighbours, call: WZZZ401, place: hill, ${figures}, tone: 141.3, width: 25 }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, standard: GMRS 20 }`;

describe('a repeater at 146.940 MHz with -0.6 MHz', () => {
  test.each([
    // Written, the rule, where, what to write instead.
    ['output: 146.940, offset: 0.6, tone: 100.0', 'offset/wrong-sign', 'offset', '-0.6 MHz'],
    ['output: 146.940, offset: -0.5, tone: 100.0', 'offset/unusual', 'offset', '-0.6 MHz'],
    ['output: 146.940, offset: -6, tone: 100.0', 'frequency/input-outside-band', 'offset', '-0.6 MHz'],
    ['output: 146.940, offset: 0, tone: 100.0', 'offset/zero', 'offset', '-0.6 MHz'],
    ['output: 146.940, input: 147.540, tone: 100.0', 'offset/wrong-sign', 'input', '146.340'],
    ['output: 146.340, offset: 0.6, tone: 100.0', 'repeater/pair-reversed', 'output', '146.940'],
    ['output: 164.940, offset: -0.6, tone: 100.0', 'frequency/output-outside-band', 'output', '146.940'],
    ['output: 149.640, offset: -0.6, tone: 100.0', 'frequency/output-outside-band', 'output', '146.940'],
    ['output: 1469.40, offset: -0.6, tone: 100.0', 'frequency/output-outside-band', 'output', '146.940'],
    ['output: 145.940, offset: -0.6, tone: 100.0', 'repeater/forbidden-segment', 'output', undefined],
    ['output: 146.940, offset: -0.6, tone: 100.1', 'tone/not-standard', 'tone', '100.0'],
  ])('written %s', async (figures, rule, key, suggestion) => {
    const found = await findingsOf(gap(figures));
    expect(found.map((finding) => [finding.rule, finding.path.join('.'), finding.suggestion])).toEqual([
      [rule, `repeaters.gap.${key}`, suggestion],
    ]);
  });
});

describe('a simplex channel at 146.550 MHz', () => {
  test.each([
    ['simplex: 164.550, width: 25', 'frequency/outside-allocation', '146.550'],
    ['simplex: 14.655, width: 25', 'frequency/outside-allocation', '146.550'],
    ['simplex: 156.800, width: 25', 'frequency/listen-only-transmitted', 'listen: 156.800'],
    ['simplex: 146.850, width: 25', 'band-plan/simplex-on-repeater-frequency', undefined],
    ['simplex: 145.850, width: 25', 'band-plan/in-satellite-segment', undefined],
    ['simplex: 144.250, width: 25', 'band-plan/in-weak-signal-segment', undefined],
    ['simplex: 144.050, width: 25', 'frequency/emission-not-admitted', undefined],
    ['simplex: 144.105, width: 25', 'frequency/edge-spill', undefined],
    ['simplex: 146.553, width: 25', 'radio/off-step', '146.555'],
    ['simplex: 146.555, width: 25', 'frequency/off-raster', '146.550'],
    ['simplex: 223.500, width: 25', 'radio/receive-range', undefined],
  ])('written %s', async (figures, rule, suggestion) => {
    const found = await findingsOf(simplex(figures));
    expect(found.map((finding) => [finding.rule, finding.path.join('.'), finding.suggestion])).toEqual([
      [rule, 'channels.3.simplex', suggestion],
    ]);
  });
});

describe('a GMRS repeater at 462.675 MHz', () => {
  test('is sound with +5 MHz', async () => {
    expect((await findingsOf(family('output: 462.675, offset: 5'))).map(({ message }) => message)).toEqual(
      [],
    );
  });

  test.each([
    ['output: 462.675, offset: -5', 'offset/fixed-by-rule', 'offset', '+5 MHz'],
    ['output: 462.675, offset: 4.975', 'offset/fixed-by-rule', 'offset', '+5 MHz'],
    ['output: 467.675, offset: -5', 'service/repeater-not-allowed', 'output', '462.675'],
    ['output: 462.6625, offset: 5', 'service/repeater-not-allowed', 'output', undefined],
    ['service: amateur, output: 462.675, offset: 5', 'service/without-frequency', 'service', 'gmrs'],
  ])('written %s', async (figures, rule, key, suggestion) => {
    const found = await findingsOf(family(figures));
    expect(found.map((finding) => [finding.rule, finding.path.join('.'), finding.suggestion])).toEqual([
      [rule, `repeaters.gap.${key}`, suggestion],
    ]);
  });
});

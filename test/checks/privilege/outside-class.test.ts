import { expect, test } from 'vitest';
import { formatFrequency } from '../../../src/radio/format-quantity.ts';
import { mhz } from '../../../src/regulations/mhz.ts';
import { privilegesTable } from '../../sources/regulations/us-amateur-privileges.ts';
import { foundBy } from '../found-by.ts';

const plan = (operatorClass: string, frequency: string, mode: string) => `
radios:
  set: { name: All-band set, transmits: [1.8-1300], receives: [0.1-1300], certified: [amateur], memories: 1-99, steps: [0.5], modes: [fm, ssb, cw], tones: [ctcss], powers: 5 W }
members:
  ada: { name: Ada Example, licences: { amateur: { class: extra, call: KX4XAA } }, radios: [set], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: ${operatorClass}, call: KX4XBB } }, radios: [set], at: base }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: TRY, simplex: ${frequency}, mode: ${mode} }
check-ins:
  morning: { name: Morning check-in, channel: 1, at: "07:30", who: [ada], control: [ada] }
fallbacks:
  first: { name: First, who: [ben], reach: [ada], rungs: [{ grade: primary, channel: 3 }] }`;
const refused = async (operatorClass: string, frequency: string, mode: string) =>
  (await foundBy('privilege/outside-class', plan(operatorClass, frequency, mode))).length > 0;

// 47 CFR 97.301 and 97.305: examples of the published question pools of the volunteer examiners.
test.each([
  ['technician', '146.520', 'fm', true],
  ['technician', '50.200', 'ssb', true],
  ['technician', '28.350', 'ssb', true],
  ['technician', '28.550', 'ssb', false],
  ['technician', '14.250', 'ssb', false],
  ['technician', '7.200', 'ssb', false],
  ['technician', '7.050', 'cw', true],
  ['general', '14.250', 'ssb', true],
  ['general', '14.200', 'ssb', false],
  ['general', '3.850', 'ssb', true],
  ['general', '3.750', 'ssb', false],
  ['advanced', '3.750', 'ssb', true],
  ['advanced', '14.160', 'ssb', false],
  ['extra', '14.160', 'ssb', true],
])('%s at %s MHz by %s: may transmit is %s', async (operatorClass, frequency, mode, may) => {
  expect(await refused(operatorClass, frequency, mode)).toBe(!may);
});

// The table of 97.301, by Morse, which every class may send wherever it may transmit; 60 m has channels of its own.
const byMorse = privilegesTable.filter(([band, , from]) => band !== '60 m' && from !== '219');
const classes = ['novice', 'technician', 'general', 'advanced', 'extra'];

test.each(classes)(
  'a ladder may call %s operators wherever their class may transmit, and nowhere else',
  async (own) => {
    // A kilohertz above the middle of each segment, which may be the edge of another class's.
    const places = new Set(
      byMorse.map(([, , from, to]) => Math.round((mhz(from) + mhz(to)) / 2000) * 1000 + 1000),
    );
    for (const hz of places) {
      const may = byMorse.some(
        ([, operatorClass, from, to]) => operatorClass === own && mhz(from) <= hz && hz <= mhz(to),
      );
      expect([formatFrequency(hz), await refused(own, formatFrequency(hz), 'cw')]).toEqual([
        formatFrequency(hz),
        !may,
      ]);
    }
  },
);

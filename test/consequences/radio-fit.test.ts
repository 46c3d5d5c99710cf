import { describe, expect, test } from 'vitest';
import { findingsOf } from '../checks/findings-of.ts';

const set = (rest: string, certified: string) =>
  `radios:\n  handheld: { name: Set, transmits: [27-28, 151-155, 462-468], receives: [27-28, 151-155, 462-468], certified: [${certified}], memories: 1-40, tones: [ctcss], powers: { high: 2 W }, ${rest} }\n`;
const licensed =
  'members:\n  ada: { name: Ada Example, licences: { gmrs: { call: WZZZ401, expires: 2033-02-01 } }, radios: [handheld], at: base }\nfallbacks: {}\ncheck-ins: {}\n';
const channel = (standard: string, rest = '') =>
  `channels:\n  1: { name: TALK, standard: ${standard}${rest} }\nrepeaters: {}\n`;
const about = async (piece: string) =>
  (await findingsOf(piece))
    .filter(({ rule }) => /off-step|cannot-set|over-lawful/.test(rule))
    .map(({ rule }) => rule);

// Certified sets have the channels of their service built in: 47 CFR 95.963, 95.563 and 95.2763 list them to the hertz.
describe('a set certified for a service has its channels, whatever steps and widths are written of it', () => {
  test.each([
    ['CB 19', 'cb', 'steps: [10], modes: [am]', ', mode: am'],
    ['MURS 2', 'murs', 'widths: [11.25, 20]', ''],
    ['FRS 3', 'frs', 'steps: [5], widths: [12.5]', ''],
  ])('%s', async (standard, service, figures, mode) => {
    expect(await about(set(figures, service) + channel(standard, mode))).toEqual([]);
  });
});

test('a width that is written is held against every set', async () => {
  expect(await about(licensed + set('widths: [12.5]', 'gmrs') + channel('GMRS 20', ', width: 25'))).toEqual([
    'width/radio-cannot-set',
  ]);
});

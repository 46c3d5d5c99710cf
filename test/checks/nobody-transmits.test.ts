import { expect, test } from 'vitest';
import { findingsOf } from './findings-of.ts';

// What a radio's description leaves out must not make a dead first call pass unseen.
test.each([
  ['no tones', 'certified: [amateur]'],
  ['no tones and no certification', ''],
  ['no tones and the certification of another service', 'certified: [gmrs]'],
])('a group whose radios have %s is told that nobody can open the repeater', async (_, certified) => {
  const findings = await findingsOf(`
radios:
  handheld:
    name: Handheld
    transmits: [144-148]
    receives: [136-174]
    memories: 1-128
    ${certified}
    powers: { high: 5 W }
`);
  expect(findings.filter(({ severity }) => severity === 'error').map(({ rule }) => rule)).toContain(
    'tone/radio-cannot-send',
  );
});

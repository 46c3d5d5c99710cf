import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { keysOf } from './keys-of.ts';
import { demo, emptyFolder, readback } from './readback.ts';

/** The demo's own trials: from the ford nothing was heard of the Gap, from the shelter it was broken, from the lookout readable. */
function ground(from: string, to: string, ...more: readonly string[]): string {
  const { status, out, err } = readback(['ground', demo, '--from', from, '--to', to, ...more]);
  expect({ status, err }).toEqual({ status: 0, err: '' });
  return out;
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ');

describe('where a path is predicted to close', () => {
  test.each([
    ['ford', 'the trial of 2026-11-15 heard nothing'],
    ['shelter', 'the trial of 2026-11-14 heard it broken'],
  ])(
    'a trial from the %s that failed overrules the prediction: walk to clearly better ground',
    (from, words) => {
      const out = ground(from, 'gap');
      expect(oneLine(out)).toContain(
        `Predicted to close here with 90 %, but ${words}: the prediction is too hopeful here.`,
      );
      expect(out).not.toContain('Nobody need walk');
      expect(out).not.toContain('An antenna');
      const hereDb = Number(/margin (\d+) dB/.exec(out)?.[1]);
      const spotsDb = [...out.matchAll(/^ {2}\d .* \+(\d+) dB$/gm)].map(([, margin]) => Number(margin));
      expect(spotsDb).toHaveLength(5);
      // Both are shown in whole decibels.
      expect(Math.min(...spotsDb)).toBeGreaterThanOrEqual(hereDb + 9);
    },
  );

  test('and nothing clearly better lies within the time, the best ground is named', () => {
    const out = ground('ford', 'gap', '--within', '10min');
    expect(oneLine(out)).toMatch(
      /No ground within 10 min has 10 dB more than here\. The best there is: 1 \d+ min/,
    );
  });

  test('and a trial was readable, nobody need walk', () => {
    const out = ground('lookout', 'gap');
    expect(out).toContain('Nobody need walk: the path closes here with 90 %.');
    expect(out).not.toContain('An antenna');
  });
});

test('where a path is not predicted to close, ground with the chance wanted is named, or a higher antenna', () => {
  const out = ground('ford', 'piney');
  expect(out).toContain('No antenna up to 10 m above the ground would give 90 % here.');
  expect(out).toMatch(/^Nearest ground with 90 %, by walking time\n {2}1 .* dB 9\d %$/m);
});

test('a trial that was readable where the path is not predicted to close is tried again before anyone walks', () => {
  const folder = join(emptyFolder(), 'plans');
  cpSync('plans', folder, { recursive: true });
  const plan = join(folder, 'hickory-gap.yaml');
  const nothing = 'from: ford, to: gap, channel: 1, radio: handheld, member: otis, heard: nothing';
  const written = readFileSync(plan, 'utf8');
  expect(written).toContain(nothing);
  writeFileSync(
    plan,
    written.replace(
      nothing,
      nothing.replace('to: gap, channel: 1', 'to: schoolhouse, channel: 3').replace('nothing', 'weak'),
    ),
  );
  const { out } = readback(['ground', plan, '--from', 'ford', '--to', 'schoolhouse', '--channel', '3']);
  expect(oneLine(out)).toContain(
    'Not predicted to close here with 90 %, but weak on 2026-11-15: call from here before anyone walks.',
  );
});

test('programs are told of the trial, and that it overrules the prediction', () => {
  const answer = JSON.parse(ground('ford', 'gap', '--json'));
  expect(answer).toMatchObject({ tried: { date: '2026-11-15', heard: 'nothing' }, tooHopeful: true });
  for (const { marginDb } of answer.spots)
    expect(marginDb).toBeGreaterThanOrEqual(answer.here.marginDb + 9.9);
  expect(JSON.parse(ground('mill', 'piney', '--json'))).toMatchObject({ tried: null, tooHopeful: false });
});

test.each([
  ['ford', 'gap'],
  ['shelter', 'gap'],
  ['ford', 'piney'],
  ['ford', 'home'],
])('from %s to %s no line is wider than 80 columns', (from, to) => {
  const widths = ground(from, to)
    .split('\n')
    .map((line) => line.length);
  expect(Math.max(...widths)).toBeLessThanOrEqual(80);
});

test('its help names every field that programs are given', () => {
  const help = readback(['ground', '--help']).out;
  const keys = keysOf(JSON.parse(ground('shelter', 'gap', '--json')));
  expect(keys).toContain('climbM');
  for (const key of keys) expect(help).toMatch(new RegExp(`\\b${key}\\b`));
  expect(Math.max(...help.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

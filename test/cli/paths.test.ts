import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { keysOf } from './keys-of.ts';
import { demo, emptyFolder, readback } from './readback.ts';

const text = readFileSync(demo, 'utf8');
const oneLine = (said: string) => said.replace(/\s+/g, ' ');
const longest = (said: string) => Math.max(...said.split('\n').map((line) => [...line].length));

/** The demo with one thing changed, beside its elevation file. */
function changed(change: (text: string) => string): string {
  const folder = emptyFolder();
  mkdirSync(join(folder, 'terrain'));
  copyFileSync(
    demo.replace('hickory-gap.yaml', 'terrain/hickory-gap.tif'),
    join(folder, 'terrain/hickory-gap.tif'),
  );
  const plan = join(folder, 'plan.yaml');
  writeFileSync(plan, change(text));
  return plan;
}

const withoutGround = () => changed((whole) => whole.replace(/^terrain:\n(?: .*\n)+/m, ''));
/** A degree to the north of where the file ends. */
const orchardOutside = () => changed((whole) => whole.replace('"36.6020, -84.1800"', '"37.6020, -84.1800"'));

describe('the table of paths', () => {
  test.each(['hickory-gap', 'lauterkar-hut', 'loon-lake', 'saltbush-track'])(
    'of %s fits 80 columns, with trials and without',
    (plan) => {
      for (const trials of [[], ['--trials']]) {
        const { status, out } = readback(['paths', demo.replace('hickory-gap', plan), ...trials]);
        expect(status).toBe(0);
        expect(longest(out)).toBeLessThanOrEqual(80);
      }
    },
  );

  test('tells two channels to one end apart by their slots', () => {
    const { out } = readback(['paths', demo.replace('hickory-gap', 'lauterkar-hut')]);
    for (const group of out.split('\n\n')) {
      const ends = group.split('\n').flatMap((line) => /^ {2}(\S.*?) {2,}/.exec(line)?.[1] ?? []);
      expect(ends).toEqual([...new Set(ends)]);
    }
    expect(out).toContain('Talstation, pmr, slot 8');
  });

  test('has its verdicts one under the other, whether the spread has one figure or two', () => {
    const { out } = readback(['paths', demo]);
    const rows = out.split('\n').filter((line) => / dB ±\d/.test(line));
    expect(rows.some((row) => row.includes('±9 ')) && rows.some((row) => row.includes('±10 '))).toBe(true);
    expect(new Set(rows.map((row) => row.search(/\b(solid|likely|doubtful|no)\b {0,8}/))).size).toBe(1);
  });

  test('keeps what was heard where the row has no room for it', () => {
    const { out } = readback(['paths', demo, '--from', 'lookout']);
    expect(out).toMatch(/Gap repeater .* solid\n +heard readable 11-15\n/);
  });

  test('says how to mend it where rows lack elevation data, and still what was heard there', () => {
    const { status, out } = readback(['paths', orchardOutside(), '--from', 'orchard']);
    expect(status).toBe(0);
    expect(oneLine(out)).toContain('Heard on 11-21: readable.');
    expect(oneLine(out)).toContain(
      'Not predicted: paths from and to Orchard Farm, which no elevation file covers. Name elevation files that cover these places under terrain.files',
    );
    expect(readback(['paths', demo]).out).not.toContain('terrain.files');
    expect(longest(out)).toBeLessThanOrEqual(80);
  });
});

describe('trials beside their predictions', () => {
  test('without ground stand alone: no correction is offered of nothing', () => {
    const { status, out } = readback(['paths', withoutGround(), '--trials']);
    expect(status).toBe(0);
    expect(out.match(/predicted: not possible, no elevation data; heard /g)).toHaveLength(6);
    expect(out).not.toMatch(/By kind of radio|correction/);
    expect(oneLine(out)).toContain(
      'No path was predicted: the plan names no elevation file (terrain.files).',
    );
    expect(longest(out)).toBeLessThanOrEqual(80);
  });

  test('explain the correction that they offer', () => {
    const { out } = readback(['paths', demo, '--trials']);
    expect(oneLine(out)).toMatch(
      /handheld: 5 trials, mean error (-\d+) dB, .* offered correction -\d+ dB \(the mean drawn towards none, because few trials stand behind it\)/,
    );
  });
});

describe('check --paths, where nothing could be predicted', () => {
  test('says so for a plan without ground, on standard error', () => {
    const plan = withoutGround();
    const { status, err } = readback(['check', '--paths', plan]);
    expect({ status, err }).toEqual({
      status: 0,
      err: 'No path was predicted: the plan names no elevation file (terrain.files).\n',
    });
    expect(readback(['check', plan]).err).toBe('');
  });

  test('names the place that lies outside of the elevation files', () => {
    const { err } = readback(['check', '--paths', '--json', orchardOutside()]);
    expect(err).toBe('Not predicted: paths from and to Orchard Farm, which no elevation file covers.\n');
  });

  test('names the plan where there are several, and says nothing of one that was predicted whole', () => {
    const plan = withoutGround();
    const { err } = readback(['check', '--paths', demo, plan]);
    expect(oneLine(err).trim()).toBe(
      `${plan}: No path was predicted: the plan names no elevation file (terrain.files).`,
    );
  });
});

test('its help names every field that programs are given', () => {
  const help = readback(['paths', '--help']).out;
  const printed = [
    ['paths', demo],
    ['paths', orchardOutside()],
    ['paths', demo, '--trials'],
  ].map((args) => JSON.parse(readback([...args, '--json']).out));
  const keys = keysOf(printed);
  expect(keys).toEqual(expect.arrayContaining(['noData', 'firstFresnelZoneM', 'offeredDb']));
  for (const key of keys) expect(help).toMatch(new RegExp(`\\b${key}\\b`));
  expect(longest(help)).toBeLessThanOrEqual(80);
});

import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { Refusal } from '../../src/findings/refusal.ts';
import { examine, type World } from '../../src/pipeline.ts';
import { rulesFile } from '../../src/plan/rules-file.ts';
import { examplePlan, markedLines } from '../checks/example-plan.ts';

const plans = new URL('../plans/', import.meta.url);
const local = await readFile(new URL('local/our-coordinator.yaml', plans), 'utf8');
const freedonia = await readFile(new URL('freedonia.yaml', plans), 'utf8');

/** A folder of files in memory; what is not in it is refused as the command line refuses it. */
function folder(files: Readonly<Record<string, string>>): World {
  return {
    today: '2026-11-25',
    read: (path) => {
      const text = files[path];
      return text === undefined
        ? Promise.reject(new Refusal(`There is no file ${path}.`, 'Check the spelling and the folder.'))
        : Promise.resolve(new TextEncoder().encode(text));
    },
  };
}

const head = (rules: string) => `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: ${rules}
  coordinator: ada
`;
const channels = (...lines: readonly string[]) =>
  `channels:\n  1: { name: GAP, repeater: gap }\n${lines.map((line) => `  ${line}`).join('\n')}`;
const simplex = '3: { name: SIMP, simplex: 146.550, width: 25 }';

async function found(piece: string, files: Readonly<Record<string, string>>) {
  const { findings, whole } = await examine(examplePlan(piece), 'plans/plan.yaml', folder(files));
  return {
    whole,
    findings,
    said: findings.map(({ rule, path, message }) => `${rule} ${path.join('.')}: ${message}`),
  };
}

describe('local rules', () => {
  const withLocal = (...lines: readonly string[]) =>
    found(`${head('[us, local/ours.yaml]')}${channels(...lines)}`, { 'local/ours.yaml': local });

  test('leave a plan that keeps them alone', async () => {
    expect((await withLocal('3: { name: SIMP, simplex: 146.565, width: 25 }')).said).toEqual([]);
  });

  test('close a segment, on the authority of their own source', async () => {
    const { findings } = await withLocal(simplex, '4: { name: CLOSED, simplex: 146.415, width: 25 }');
    const closed = findings.filter(({ rule }) => rule === 'frequency/closed-locally');
    expect(closed).toMatchObject([
      {
        path: ['channels', 4, 'simplex'],
        severity: 'error',
        source: { document: 'Frequency list of the valley coordinator' },
      },
    ]);
    expect(closed[0]?.message).toMatch(/146\.400-146\.440 MHz: kept for the link of the fire lookout/);
  });

  test('keep a segment for a use', async () => {
    const { said } = await withLocal('3: { name: SIMP, simplex: 146.625, width: 25 }');
    expect(said.join('\n')).toMatch(/packet of the valley/);
  });

  test('bar a kind of station', async () => {
    const packet = `packet:
  digipeaters:
    ridge: { call: KX4XRG-3, place: hill, channel: 3, power: 10 W }
`;
    const { said } = await found(
      `${head('[us, local/ours.yaml]')}${packet}${channels('3: { name: PACKET, simplex: 145.010, mode: packet, width: 25 }')}`,
      { 'local/ours.yaml': local },
    );
    expect(said.join('\n')).toMatch(/at 145\.010 MHz lies in 144\.900-145\.100 MHz/);
  });

  test('give a lower power, which then is the lawful one', async () => {
    const { whole } = await withLocal(simplex, '4: { name: UHF, simplex: 446.100, width: 25 }');
    const use = whole?.consequences.use('ada', 'handheld', 4);
    expect(use?.limits[0]?.maxW).toBe(2);
    expect(use?.setting).toEqual({ name: 'low', powerW: 1 });
  });

  test('cannot lift the law: more power than the law gives changes nothing', async () => {
    const gmrs = `radios:
  handheld: { name: GMRS handheld, transmits: [462.550-467.725], receives: [400-480], certified: [gmrs], memories: 1-30, steps: [12.5], widths: [25, 12.5], tones: [ctcss], powers: { high: 90 W, low: 5 W }, antenna: { gain: -3 dBd, carried: vehicle } }
members:
  ada: { name: Ada Example, licences: { gmrs: { call: WZZZ401, expires: 2033-02-01 } }, radios: [handheld], at: base }
repeaters: {}
channels:
  1: { name: FAMILY, standard: GMRS 20 }
`;
    const limits = async (rules: string) => {
      const { whole } = await found(`${head(rules)}${gmrs}`, { 'local/ours.yaml': local });
      return whole?.consequences.use('ada', 'handheld', 1)?.limits.map(({ maxW }) => maxW);
    };
    expect(await limits('us')).toEqual([50]);
    expect(await limits('[us, local/ours.yaml]')).toEqual(await limits('us'));
  });

  test.each([
    ['allocations', '[{ span: 148-149, service: amateur, band: 2 m, source: list }]'],
    ['channels', '[]'],
    ['emissions', '[]'],
    ['services', '[]'],
    ['widths', '[]'],
  ])('cannot have %s, and say why where the key stands', async (key, value) => {
    const text = `${local}${key}: ${value}\n`;
    const { findings, whole } = await found(head('[us, local/ours.yaml]'), { 'local/ours.yaml': text });
    expect(whole).toBeUndefined();
    expect(findings).toMatchObject([
      {
        rule: 'plan/unknown-key',
        place: { file: 'plans/local/ours.yaml', line: local.split('\n').length, column: 1 },
      },
    ]);
    expect(findings[0]?.message).toBe(
      `Local rules cannot have \`${key}\`: they add to the rules of a country and cannot allow what those do not.`,
    );
  });

  test('cannot fix an offset', async () => {
    const text = local.replace('usual: -1,', 'usual: -1, fixed: true,');
    const { said } = await found(head('[us, local/ours.yaml]'), { 'local/ours.yaml': text });
    expect(said).toEqual([
      'plan/unknown-key offsets.0.fixed: Local rules cannot fix an offset: only the rules of a country leave no choice.',
    ]);
  });

  test('are found wrong at the row that is, in their own file', async () => {
    const text = local
      .replace('service: gmrs', 'service: gmsr')
      .replace('use: packet', 'use: packets')
      .replace('power: 2 W', 'power: 2 MHz');
    const written = await found(head('[us, local/ours.yaml]'), { 'local/ours.yaml': text });
    const line = (words: string) => text.split('\n').findIndex((each) => each.includes(words)) + 1;
    expect(written.findings.map(({ place }) => [place.file, place.line])).toEqual([
      ['plans/local/ours.yaml', line('use: packets')],
      ['plans/local/ours.yaml', line('power: 2 MHz')],
    ]);
    const named = await found(head('[us, local/ours.yaml]'), {
      'local/ours.yaml': local.replace('service: gmrs', 'service: gmsr'),
    });
    expect(named.findings).toMatchObject([
      {
        rule: 'plan/unsound-rules',
        message: 'A row of powers names the service gmsr, which is not listed.',
        place: { line: line('service: gmsr') },
      },
    ]);
  });
});

describe('the list of rules', () => {
  test.each([
    ['[us, local/none.yaml]', 'There is no file local/none.yaml.'],
    ['none.yaml', 'There is no file none.yaml.'],
    [
      '[us, ca]',
      '`ca` is a second country; a plan has the rules of one, and after it files of local coordination.',
    ],
    ['[us, ours]', '`ours` is not a rules file; their names end in .yaml.'],
    [
      'ours.yaml',
      '`ours.yaml` holds local rules, which add to those of a country; `rules` begins with the country.',
    ],
    [
      '[us, freedonia.yaml]',
      '`freedonia.yaml` holds the rules of a country; those stand first, and only local rules after them.',
    ],
  ])('%s is found wrong in the plan', async (rules, message) => {
    const { findings, whole } = await found(head(rules), { 'ours.yaml': local, 'freedonia.yaml': freedonia });
    expect(whole).toBeUndefined();
    expect(findings).toMatchObject([
      { rule: 'plan/unknown-rules', message, place: { file: 'plans/plan.yaml', line: 8 } },
    ]);
  });
});

describe('a country from a file', () => {
  const freedonian = (lines: readonly string[], klass = 'squire') => `
plan:
  title: Freedonian post riders
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: Europe/Vienna
  rules: freedonia.yaml
  coordinator: ada
radios:
  handheld: { name: Handheld, transmits: [144-146, 151-151.1], receives: [136-174], certified: [amateur, parish], memories: 1-30, name-length: 8, steps: [12.5], widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W, low: 1 W } }
members:
  ada: { name: Ada Example, licences: { amateur: { class: ${klass}, call: XX1XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: ${klass}, call: XX1XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }
repeaters:
  gap: { name: Gap repeater, call: XX1XRR, output: 144.900, offset: -0.6, tone: 100.0, width: 12.5, place: hill, power: 10 W }
channels:
  1: { name: GAP, repeater: gap }
${lines.map((line) => `  ${line}`).join('\n')}
`;
  const parish = '3: { name: PARISH, standard: PARISH 2 }';
  const files = { 'freedonia.yaml': freedonia };

  test('needs no code: a plan that keeps its rules has no findings of law or band plan', async () => {
    const { findings, whole } = await found(freedonian([parish]), files);
    expect(findings.filter(({ basis }) => basis === 'law' || basis === 'band plan')).toEqual([]);
    expect(whole?.law.country.name).toBe('Freedonia');
    expect(whole?.consequences.channels.get(3)).toMatchObject({
      receiveHz: 151_025_000,
      services: ['parish'],
    });
    expect(whole?.consequences.use('ada', 'handheld', 3)).toMatchObject({
      may: 'transmit',
      setting: { powerW: 1 },
    });
  });

  test.each([
    ['privilege/outside-class', '4: { name: HIGH, simplex: 145.500, width: 12.5 }'],
    ['frequency/outside-allocation', '4: { name: OFF, simplex: 147.500, width: 12.5 }'],
    ['band-plan/in-weak-signal-segment', '4: { name: WEAK, simplex: 144.100, width: 12.5 }'],
    ['standard/unknown-channel', '4: { name: NONE, standard: PARISH 9 }'],
  ])('is obeyed: %s', async (rule, channel) => {
    const fallbacks =
      'fallbacks:\n  first: { name: First, who: all, reach: [ada], rungs: [{ grade: primary, channel: 4, calls: 3, within: 5 min }, { grade: emergency, meet: base, at: next full hour }] }\n';
    const { said } = await found(`${freedonian([parish, channel])}${fallbacks}`, files);
    expect(
      said.filter((line) => line.startsWith(rule)),
      said.join('\n'),
    ).not.toEqual([]);
  });

  test('may keep the sets of two services apart, and limit the height of antennas', async () => {
    const stricter = freedonia.replace(
      'must-hold: a set marked PARISH',
      'must-hold: a set marked PARISH\n    certified-apart: { from: [amateur], source: act }',
    );
    const raised = freedonian([parish]).replace(
      'powers: { high: 5 W, low: 1 W }',
      'powers: { high: 5 W, low: 1 W }, antenna: { height: 14 m, carried: hand }',
    );
    const { findings } = await found(raised, { 'freedonia.yaml': stricter });
    expect(findings).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ rule: 'service/certified-for-both' }),
        expect.objectContaining({
          rule: 'service/antenna-too-high',
          message:
            'The antenna of Handheld stands 14 m high; the Parish Radio has it at most 12 m above ground, or 3 m above what carries it where that is higher.',
          source: { document: 'Custom of the Freedonian League', fromMemory: true },
        }),
      ]),
    );
    const { findings: loose } = rulesFile(
      stricter.replace('from: [amateur]', 'from: [choir]'),
      'freedonia.yaml',
    );
    expect(loose.map(({ rule }) => rule)).toEqual(['plan/unsound-rules']);
  });

  test('is held to what the tables of a country must be', async () => {
    const broken = freedonia
      .replace(
        '{ span: 145-146, service: amateur, band: 2 m, classes: [knight], source: act }',
        '{ span: 144.9-146, service: amateur, band: 2 m, classes: [knigth], source: act }  # wrong',
      )
      .replace('label: marine distress, source: act }', 'label: marine distress, source: rumour }  # wrong');
    const { findings } = rulesFile(broken, 'freedonia.yaml');
    expect(findings.map(({ place }) => place.line)).toEqual(
      expect.arrayContaining(markedLines(broken, /# wrong/)),
    );
    expect(new Set(findings.map(({ rule }) => rule))).toEqual(new Set(['plan/unsound-rules']));
  });

  test('says what a row lacks, and which keys there are', () => {
    const broken = freedonia
      .replace(
        '{ span: 156.8, label: marine distress, source: act }',
        '{ span: 156.8, lable: marine distress, source: act }',
      )
      .replace('scope: country', 'scope: land');
    expect(rulesFile(broken, 'f.yaml').findings.map(({ message }) => message)).toEqual([
      'Expected country for a whole country’s rules, local for what a coordinator adds to them; found `land`.',
    ]);
    const only = rulesFile(broken.replace('scope: land', 'scope: country'), 'f.yaml').findings;
    expect(only.map(({ message, suggestion }) => [message, suggestion])).toEqual([
      ['`listen-only.0` has no `label`: what is heard there.', undefined],
      ['`lable` is not a key that `listen-only.0` can have.', 'label'],
    ]);
  });

  test('says what a missing caution is', () => {
    const [finding] = rulesFile(freedonia.replace(/^caution: .*\n/m, ''), 'f.yaml').findings;
    expect(finding?.message).toBe(
      'The rules file has no `caution`: one line that every document prints, such as: A planning aid, not legal advice.',
    );
  });

  test('a row whose source is remembered is remembered itself', () => {
    const { rules } = rulesFile(freedonia, 'f.yaml');
    if (rules?.scope !== 'country') throw new Error('no country');
    expect(rules.country.bandPlan.every(({ fromMemory }) => fromMemory)).toBe(true);
    expect(rules.country.allocations.some(({ fromMemory }) => fromMemory)).toBe(false);
  });
});

test.each([
  ['', 'The file is empty; a rules file begins with `readback-rules: 1`.'],
  ['- a\n', /^Expected rules: a mapping that begins with readback-rules: 1; found a list/],
  [
    'readback-rules: 1\n',
    'The rules file has no `scope`: country for a whole country’s rules, local for what a coordinator adds to them.',
  ],
  ['scope: [\n', /./],
])('%j is not a rules file', (text, message) => {
  const { findings, rules } = rulesFile(text, 'f.yaml');
  expect(rules).toBeUndefined();
  expect(findings[0]?.message).toMatch(message);
});

test('a rules file says in which language its caution and its duties are, by a code that there can be', () => {
  const inGerman = freedonia.replace(
    /^caution: .*$/m,
    'caution: Regeln eines Landes, das es nicht gibt.\nlanguage: de-AT',
  );
  const { rules } = rulesFile(inGerman, 'freedonia.yaml');
  expect(rules).toMatchObject({ country: { language: 'de-AT' } });
  const { findings } = rulesFile(inGerman.replace('de-AT', 'Deutsch'), 'freedonia.yaml');
  expect(findings[0]?.message).toBe(
    'Expected the code of a language, such as en, de or es; found `Deutsch`.',
  );
});

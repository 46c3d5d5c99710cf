import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { everyKey } from '../plan/every-key.ts';
import { demo, emptyFolder, programPath, readback, theDay } from './readback.ts';

const demoText = readFileSync(demo, 'utf8');
const traces = /\n\s+at |node:internal|\/out\/\.tested/;

/** A plan of its own in a folder of its own; the elevation files are left out with the section that names them. */
function planFile(change: (text: string) => string = (text) => text): { folder: string; file: string } {
  const folder = emptyFolder();
  const file = join(folder, 'plan.yaml');
  writeFileSync(file, change(demoText));
  return { folder, file };
}

const withError = (text: string) => text.replace('tone: 100.0', 'tone: 023');
const withWarning = (text: string) => text.replace('offset: -0.6', 'offset: -0.5');

describe('the exit status', () => {
  test('is 0 where nothing is wrong', () => {
    const { status, out, err } = readback(['check', demo]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toMatch(/^Hickory Gap Valley Watch +revision 3, plan check [A-Z]\d[A-Z]\d/);
  });

  test('is 1 on an error', () => {
    const { status, out } = readback(['check', planFile(withError).file]);
    expect(status).toBe(1);
    expect(out).toMatch(/^error: 023 is no tone/);
  });

  test('is 0 on a warning, and 1 with --strict', () => {
    const { file } = planFile(withWarning);
    expect(readback(['check', file]).status).toBe(0);
    expect(readback(['check', '--strict', file]).status).toBe(1);
  });

  test.each([
    [['check', 'no-such-plan.yaml'], /There is no file no-such-plan\.yaml/],
    [['check', 'plans'], /plans is a folder/],
    [['check'], /missing required argument/],
    [['check', '-', '-'], /`-` stands twice: standard input can be read only once/],
    [
      ['check', '--json', '--format', 'sarif', 'x'],
      /'--json' cannot be used with option '--format|'--format <format>' cannot be used with option '--json'/,
    ],
    [
      ['check', 'no-such.yaml', 'nor-such.yaml'],
      /There is no file no-such\.yaml[\s\S]*There is no file nor-such\.yaml/,
    ],
    [['check', '--bogus', 'x'], /unknown option '--bogus'/],
    [['check', '--format', 'xml', 'x'], /Allowed choices are text, json, sarif, github/],
    [['chek', 'x'], /Did you mean check\?/],
    [['check', '--today', '2026-13-01', demo], /--today 2026-13-01 is not a date/],
    [['check', '--today', 'yesterday', demo], /not a date/],
    [['explain', 'offset/unusal'], /Did you mean offset\/unusual\?/],
    [['build', demo, '--out', '/dev/null'], /in the way/],
    [['build', demo, '--templates', '/no/such/folder'], /could not be read/],
    [['schema', '--out', '/no/such/folder/x'], /could not be written/],
    [['new', '/no/such/folder/x.yaml'], /could not be written/],
  ])('is 2 for %j, with a sentence on standard error and nothing on standard output', (args, words) => {
    const { status, out, err } = readback(args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toMatch(words);
    expect(err).not.toMatch(traces);
  });

  test('of a mistyped command line comes with a word on how to get help', () => {
    expect(readback(['chek']).err).toMatch(/--help/);
  });
});

describe('what is no plan is met with a sentence', () => {
  test.each([
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0]), 2, /is not a text file/],
    ['UTF-16', Buffer.from('\ufeffreadback: 1', 'utf16le'), 2, /is saved as UTF-16/],
    [
      'Latin-1',
      Buffer.from('plan:\n  title: Café', 'latin1'),
      2,
      /plan\.yaml:2:13: the byte E9 is not UTF-8/,
    ],
    ['50 megabytes', Buffer.alloc(50 * 1024 * 1024, 0x23), 2, /holds 50 MB/],
    ['an empty file', Buffer.alloc(0), 1, /The file is empty/],
    ['a file of brackets', Buffer.from('['.repeat(100_000)), 1, /nested more than 64 levels/],
    ['an alias in itself', Buffer.from('a: &a [*a]'), 1, /has no end/],
    ['a tab', Buffer.from('readback: 1\nplan:\n\ttitle: x\n'), 1, /indented with a tab/],
  ])('%s', (_, bytes, status, words) => {
    const folder = emptyFolder();
    writeFileSync(join(folder, 'plan.yaml'), bytes);
    const ran = readback(['check', 'plan.yaml'], { cwd: folder });
    expect(ran.status).toBe(status);
    expect(ran.out + ran.err).toMatch(words);
    expect(ran.out + ran.err).not.toMatch(traces);
  });

  test('a device without end', () => {
    expect(readback(['check', '/dev/zero'])).toMatchObject({ status: 2, out: '' });
  });

  test('an elevation file outside the folder of the plan, even by way of a link', () => {
    const { folder, file } = planFile((text) => text.replace('terrain/hickory-gap.tif', 'terrain/x.tif'));
    mkdirSync(join(folder, 'terrain'));
    symlinkSync('/etc/passwd', join(folder, 'terrain/x.tif'));
    const { status, out, err } = readback(['check', file]);
    expect(out + err).not.toMatch(/root:/);
    expect(out + err).not.toMatch(traces);
    expect([0, 1, 2]).toContain(status);
  });
});

describe('standard input', () => {
  test('is read for -, and called by the name that is given', () => {
    const { status, out } = readback(['check', '-', '--stdin-filename', 'draft.yaml'], {
      stdin: withError(demoText),
    });
    expect(status).toBe(1);
    expect(out).toMatch(/ draft\.yaml:\d+:\d+/);
  });

  test('cannot be two plans of a comparison', () => {
    const { status, err } = readback(['compare', '-', '-'], { stdin: demoText });
    expect({ status, err }).toEqual({
      status: 2,
      err: 'readback: `-` stands twice: standard input can be read only once.\n  Name a file in place of one of them.\n',
    });
  });

  test('is called standard input otherwise', () => {
    expect(readback(['check', '-'], { stdin: '' }).out).toMatch(/standard input:1:1/);
  });
});

describe('--json', () => {
  test('gives one plan as one object, of a shape that stays', () => {
    const { file } = planFile(withWarning);
    const { status, out } = readback(['check', '--json', file]);
    expect(status).toBe(0);
    const report = JSON.parse(out);
    expect(Object.keys(report)).toEqual(['plan', 'revision', 'check', 'findings', 'counts', 'accepted']);
    expect(report).toMatchObject({ plan: file, revision: 3, counts: { error: 0 } });
    expect(report.check).toMatch(/^[A-Z]\d[A-Z]\d$/);
    const unusual = report.findings.find((finding: { rule: string }) => finding.rule === 'offset/unusual');
    expect(unusual).toMatchObject({
      severity: 'warning',
      basis: 'band plan',
      message: expect.stringMatching(/^Offset is -0\.5 MHz/),
      file,
      line: demoText.split('\n').findIndex((line) => line.includes('offset: -0.6')) + 1,
      column: 13,
      path: 'repeaters.gap.offset',
      source: { document: expect.any(String) },
    });
  });

  test('gives several plans as a list', () => {
    const { file } = planFile(withError);
    const { status, out } = readback(['check', '--json', demo, file]);
    expect(status).toBe(1);
    const { plans } = JSON.parse(out);
    expect(plans.map(({ plan, revision }: { plan: string; revision: number }) => [plan, revision])).toEqual([
      [demo, 3],
      [file, null],
    ]);
  });

  test('is the same as --format json', () => {
    expect(readback(['check', '--format', 'json', demo]).out).toBe(readback(['check', '--json', demo]).out);
  });
});

describe('other programs', () => {
  test('read findings as SARIF 2.1.0', () => {
    const log = JSON.parse(readback(['check', '--format', 'sarif', planFile(withWarning).file]).out);
    expect(log).toMatchObject({ version: '2.1.0', runs: [{ columnKind: 'utf16CodeUnits' }] });
    expect(log.runs[0].results.length).toBeGreaterThan(0);
  });

  test('read findings as annotations of GitHub', () => {
    const { out } = readback(['check', '--format', 'github', planFile(withError).file]);
    expect(out).toMatch(/^::error file=.*plan\.yaml,line=\d+/);
  });
});

test('--quiet lists errors only, and neither the counts nor the exit status change', () => {
  const { file } = planFile((text) => withError(text));
  expect(readback(['check', '--quiet', file]).out).toMatch(/^error: /);
  const warned = planFile(withWarning).file;
  const { status, out } = readback(['check', '--quiet', '--strict', warned]);
  expect(status).toBe(1);
  expect(out).not.toMatch(/warning: /);
  expect(out).toMatch(/^No errors, [1-9]\d* warnings?, .*; errors only are listed\.$/m);
  const report = JSON.parse(readback(['check', '--quiet', '--json', warned]).out);
  expect(report.findings).toEqual([]);
  expect(report.counts.warning).toBeGreaterThan(0);
});

describe('of several plans one of which cannot be read', () => {
  test.each(['text', 'json', 'sarif', 'github'])(
    'the others are printed as %s, and the status is 2',
    (format) => {
      const { file } = planFile(withError);
      const { status, out, err } = readback(['check', '--format', format, file, 'gone.yaml', demo]);
      expect(status).toBe(2);
      expect(err).toBe(
        'readback: There is no file gone.yaml.\n  Check the spelling and the folder; `readback new FILE` writes a plan to start from.\n',
      );
      expect(out).toMatch(/023 is no tone/);
    },
  );

  test('it stands in its place among them in JSON, with the reason', () => {
    const { plans } = JSON.parse(readback(['check', '--json', 'gone.yaml', demo]).out);
    expect(plans).toMatchObject([
      { plan: 'gone.yaml', revision: null, unread: 'There is no file gone.yaml.' },
      { plan: demo, revision: 3 },
    ]);
    expect(plans[1]).not.toHaveProperty('unread');
  });
});

test('a plan whose elevation file is missing does not keep the next one from being checked', () => {
  const { file } = planFile();
  const { status, out, err } = readback(['check', '--paths', file, demo.replace('hickory-gap', 'loon-lake')]);
  expect(status).toBe(2);
  expect(err).toMatch(/There is no file terrain\/hickory-gap\.tif\./);
  expect(out).toMatch(/^Loon Lake Ice Patrol/);
});

describe('what the plan accepts', () => {
  const accepting = (text: string) =>
    withWarning(text).replace(
      /^accepted:\n/m,
      'accepted:\n  - { rule: offset/unusual, at: repeaters.gap, because: Coordinated so, until: 2027-06-01 }\n',
    );

  test('is listed in text, with reason and last day, before the count', () => {
    const { out } = readback(['check', planFile(accepting).file]);
    expect(out).toMatch(/, 1 accepted /);
    expect(out).toMatch(
      /Accepted, with the reason of the group:\n {2}offset\/unusual [\s\S]* Coordinated so; until 2027-06-01\.\n\n[^\n]+\.\n$/,
    );
  });

  test('is listed in JSON, and as suppressed results in SARIF', () => {
    const { file } = planFile(accepting);
    expect(JSON.parse(readback(['check', '--json', file]).out).accepted).toMatchObject([
      { rule: 'offset/unusual', because: 'Coordinated so', until: '2027-06-01' },
    ]);
    const { results } = JSON.parse(readback(['check', '--format', 'sarif', file]).out).runs[0];
    const suppressed = results.filter(
      ({ suppressions }: { suppressions: object[] }) => suppressions.length > 0,
    );
    expect(suppressed).toMatchObject([{ ruleId: 'offset/unusual', suppressions: [{ kind: 'inSource' }] }]);
  });
});

describe('colour', () => {
  const file = () => planFile(withError).file;
  const ansi = '\u001b[';

  test('is not put into a pipe', () => {
    expect(readback(['check', file()]).out).not.toContain(ansi);
    expect(readback(['check', file()], { env: { CI: 'true', TERM: 'xterm-256color' } }).out).not.toContain(
      ansi,
    );
  });

  test('is forced by FORCE_COLOR, save by 0', () => {
    expect(readback(['check', file()], { env: { FORCE_COLOR: '1' } }).out).toContain(ansi);
    expect(readback(['check', file()], { env: { FORCE_COLOR: '0' } }).out).not.toContain(ansi);
  });

  test('is never put against NO_COLOR or --no-color', () => {
    expect(readback(['check', file()], { env: { FORCE_COLOR: '1', NO_COLOR: '1' } }).out).not.toContain(ansi);
    expect(readback(['check', file(), '--no-color'], { env: { FORCE_COLOR: '1' } }).out).not.toContain(ansi);
    expect(readback(['--no-color', 'check', file()], { env: { FORCE_COLOR: '1' } }).out).not.toContain(ansi);
  });

  test('only repeats what the words say', () => {
    const plan = file();
    const coloured = readback(['check', plan], { env: { FORCE_COLOR: '1' } }).out;
    expect(coloured.replaceAll(/\u001b\[\d+m/g, '')).toBe(readback(['check', plan]).out);
  });
});

test('control characters of a plan do not reach the terminal', () => {
  const { file } = planFile((text) => text.replace('tone: 100.0', 'tone: "\\e[2J"'));
  const { out } = readback(['check', file]);
  expect(out).not.toContain('\u001b');
  expect(out).toMatch(/A tone is/);
});

describe('the day', () => {
  const outOfDate = /plan\/review-past/;

  test('is the one given', () => {
    expect(readback(['check', demo, '--today', '2028-01-01']).out).toMatch(outOfDate);
    expect(readback(['check', demo, '--today', theDay]).out).not.toMatch(outOfDate);
  });

  test('is that of SOURCE_DATE_EPOCH otherwise', () => {
    const epoch = String(Date.UTC(2028, 0, 1) / 1000);
    expect(readback(['check', demo], { env: { SOURCE_DATE_EPOCH: epoch } }).out).toMatch(outOfDate);
  });

  test.each(['abc', '-5', '1.5', '1e9'])('is not guessed from a SOURCE_DATE_EPOCH of %s', (epoch) => {
    const { status, err } = readback(['check', demo], { env: { SOURCE_DATE_EPOCH: epoch } });
    expect(status).toBe(2);
    expect(err).toMatch(/not a whole number of seconds/);
  });
});

test('a reader that has seen enough is no error', () => {
  const { file } = planFile((text) => text.replaceAll('width: 25', 'widht: 25'));
  const command = `"${process.execPath}" "${programPath()}" explain --json | head -1; "${process.execPath}" "${programPath()}" check "${file}" | head -1`;
  const { status, stdout, stderr } = spawnSync('bash', ['-c', command], { encoding: 'utf8' });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout.split('\n')).toHaveLength(3);
});

test('a full disk behind standard output is met with a sentence', () => {
  const command = `"${process.execPath}" "${programPath()}" check "${demo}" > /dev/full`;
  const { status, stderr } = spawnSync('bash', ['-c', command], { encoding: 'utf8' });
  expect({ status, stderr }).toEqual({
    status: 2,
    stderr: 'readback: The result could not be written: there is no room left for it.\n',
  });
});

test('another zone and another language of the machine change nothing', () => {
  const there = { TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' };
  expect(readback(['check', '--json', demo], { env: there }).out).toBe(
    readback(['check', '--json', demo]).out,
  );
});

test('every command has help with an example, and the whole a list of them', () => {
  const help = readback(['--help']);
  expect(help.status).toBe(0);
  const commands = [...help.out.matchAll(/^ {2}([a-z]+) .*[<[]/gm)].flatMap(([, name]) =>
    name === undefined || name === 'help' ? [] : [name],
  );
  expect(commands).toEqual(expect.arrayContaining(['check', 'build', 'explain', 'new', 'schema']));
  for (const command of commands) {
    const { status, out } = readback([command, '--help']);
    expect(status).toBe(0);
    expect(out).toMatch(new RegExp(`Examples?:\\n +readback ${command}`));
  }
});

test('a plan with every key of the language is read by the program as by the tests', () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'plan.yaml'), everyKey);
  const { out, err } = readback(['check', 'plan.yaml', '--json'], { cwd: folder });
  expect(err).toBe('');
  expect(
    JSON.parse(out).findings.filter(({ rule }: { rule: string }) =>
      /^plan\/(wrong|unknown-key|missing-entry)/.test(rule),
    ),
  ).toEqual([]);
});

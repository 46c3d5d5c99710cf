import { chmodSync, copyFileSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demo, emptyFolder, readback } from './readback.ts';

function fileOf(folder: string, name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** The MURS handheld of the demo, as its worksheet has it. */
const right = `slot,receive,tone,width,power
1,146.940,none,25,
3,146.550,none,25,
9,162.550,none,25,
11,151.940,131.8,narrow,high
`;

describe('readback audit', () => {
  test('a radio that differs ends with 1, and says in 80 columns what to press', () => {
    const folder = emptyFolder();
    const entries = fileOf(folder, 'e.csv', right.replace('131.8', '136.5').replace('162.550', '162.505'));
    const { status, out, err } = readback(['audit', demo, '--radio', 'murs-handheld', '--entries', entries]);
    expect({ status, err }).toEqual({ status: 1, err: '' });
    expect(out).toContain(
      'slot 9 WX: the receive frequency is 162.505; the plan has 162.550\n  press: key in 162.550 as receive\n  likely: two digits are exchanged\n',
    );
    expect(out).toContain('likely: it is the next tone in the list');
    expect(out).toContain('2 differences in 2 slots');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('colour only repeats the words', () => {
    const entries = fileOf(emptyFolder(), 'e.csv', right.replace('131.8', 'off'));
    const args = ['audit', demo, '--radio', 'murs-handheld', '--entries', entries];
    const plain = readback(args).out;
    const coloured = readback(args, { env: { FORCE_COLOR: '1' } }).out;
    expect(coloured).toContain('\u001b[');
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(plain);
  });

  test('a clean one ends with 0, has a line to sign, and is recorded once asked for', () => {
    const folder = emptyFolder();
    const entries = fileOf(folder, 'e.csv', right);
    const record = join(folder, 'radios.json');
    const { status, out } = readback([
      'audit',
      demo,
      '--radio',
      'murs-handheld',
      '--entries',
      entries,
      '--record',
      record,
      '--for',
      'juno',
      '--by',
      'calder',
    ]);
    expect(out).toContain('No difference in 4 slots.');
    expect(out).toContain('Signed ____');
    expect(out.replace(/\s+/g, ' ')).toContain('1 radio holds this plan, none another.');
    expect(status).toBe(0);
    expect(JSON.parse(readFileSync(record, 'utf8'))).toMatchObject({
      audits: [{ date: '2026-11-25', radio: 'murs-handheld', for: 'juno', by: 'calder', revision: 3 }],
    });
  });

  test('a member without a licence is held against their own sheet, on which nothing is set up to transmit', () => {
    const folder = emptyFolder();
    const licence = 'licences: { amateur: { class: technician, call: KX4XHG, expires: 2035-02-27 } }\n    ';
    const text = readFileSync(demo, 'utf8');
    expect(text).toContain(licence);
    const plan = fileOf(folder, 'plan.yaml', text.replace(licence, ''));
    // As the sheet of Hollis has the repeater: she only listens to it.
    const entries = fileOf(folder, 'e.csv', 'slot,receive,offset direction,tone\n1,146.940,none,none\n');
    const args = ['audit', plan, '--radio', 'handheld', '--entries', entries];
    const own = readback([...args, '--for', 'hollis']).out;
    expect(own).toContain('No difference in what was read');
    expect(own).not.toContain('licensed holders');
    for (const owner of [[], ['--for', 'serial 0417'], ['--for', 'otis']]) {
      const { out } = readback([...args, ...owner]);
      expect(out).toContain('slot 1 GAP: the offset direction is none; the plan has minus');
      expect(out.includes('Compared with the sheet for licensed holders of this radio.')).toBe(
        owner[1] !== 'otis',
      );
    }
  });

  test('a file that is no record is never overwritten', () => {
    const folder = emptyFolder();
    const other = fileOf(folder, 'other.json', '{"mine":1}');
    const { status } = readback([
      'audit',
      demo,
      '--radio',
      'murs-handheld',
      '--entries',
      fileOf(folder, 'e.csv', right),
      '--record',
      other,
    ]);
    expect(status).toBe(2);
    expect(readFileSync(other, 'utf8')).toBe('{"mine":1}');
  });

  test('questions and answers through a pipe fill the table, and a stopped one goes on where it was', () => {
    const folder = emptyFolder();
    const table = join(folder, 'asked.csv');
    const args = ['audit', demo, '--radio', 'murs-handheld', '--ask', '--entries', table];
    const first = readback(args, { stdin: '146.94\noff\nwide\n\n146550\nnone\n25\n\nq\n' });
    expect(first.status).toBe(1);
    expect(first.err).toContain('Slot 1 (1 of 4)');
    expect(first.err).not.toContain('146.940\n');
    const second = readback(args, { stdin: '162.55\n-\n25 kHz\n\n151.940\n131.8\nN\nhigh\n' });
    expect(second.err).toContain('2 slots already');
    expect(second.out).toContain('No difference in 4 slots.');
    expect(second.status).toBe(0);
  });

  test.each([
    [['--radio', 'mobil', '--entries', 'x.csv'], 'Did you mean mobile?'],
    [['--entries', 'x.csv'], 'Name it with --radio'],
    [['--radio', 'mobile'], '--ask'],
    [['--radio', 'mobile', '--entries', '/nowhere.csv'], 'There is no file /nowhere.csv'],
  ])('%j is refused with a remedy', (args, words) => {
    const { status, err } = readback(['audit', demo, ...args]);
    expect(status).toBe(2);
    expect(err).toContain(words);
  });
});

describe('readback log', () => {
  test('adds one line, keeps the mode of the file, and says what it did', () => {
    const folder = emptyFolder();
    const before = readFileSync(demo, 'utf8');
    const plan = fileOf(folder, 'plan.yaml', `\uFEFF${before}`);
    chmodSync(plan, 0o640);
    const line = '2026-11-21 trailhead to gap on 1 with handheld by inez heard readable: 5 by 7';
    const dry = readback(['log', plan, line, '--dry-run']);
    expect(dry.status).toBe(0);
    expect(dry.out).toContain(
      '+  - { date: 2026-11-21, from: trailhead, to: gap, channel: 1, radio: handheld, member: inez, heard: readable, report: 5 by 7 }',
    );
    expect(readFileSync(plan, 'utf8')).toBe(`\uFEFF${before}`);
    const { status } = readback(['log', plan, ...line.split(' ')]);
    expect(status).toBe(0);
    const after = readFileSync(plan, 'utf8');
    expect(after.length - before.length).toBeGreaterThan(80);
    expect(after.startsWith('\uFEFF#')).toBe(true);
    expect(statSync(plan).mode & 0o777).toBe(0o640);
    expect(readback(['check', plan]).status).toBe(0);
  });

  test('an unknown place changes nothing', () => {
    const plan = fileOf(emptyFolder(), 'plan.yaml', readFileSync(demo, 'utf8'));
    const { status, err } = readback(['log', plan, 'trailhed to gap heard weak']);
    expect(status).toBe(2);
    expect(err).toContain('Did you mean trailhead?');
    expect(readFileSync(plan, 'utf8')).toBe(readFileSync(demo, 'utf8'));
  });
});

describe('readback checkcode and verify', () => {
  test('the check that is printed is verified, spelled as well, and one misheard is told as near', () => {
    const [check = '', ...words] = readback(['checkcode', demo]).out.split('\n')[0]?.split(/\s+/) ?? [];
    expect(check).toMatch(/^[A-Z]\d[A-Z]\d$/);
    expect(readback(['verify', check, demo]).status).toBe(0);
    expect(readback(['verify', words.join(' '), demo]).status).toBe(0);
    const other = check.startsWith('A') ? `C${check.slice(1)}` : `A${check.slice(1)}`;
    const near = readback(['verify', other, demo]);
    expect(near.status).toBe(1);
    expect(near.out).toContain('Ask again.');
    expect(readback(['verify', 'nonsense', demo]).status).toBe(2);
  });

  test('in a folder, other plans and files that are no plans do not stand in the way', () => {
    const folder = join(emptyFolder(), 'kept');
    mkdirSync(folder);
    for (const name of ['hickory-gap.yaml', 'lauterkar-hut.yaml'])
      copyFileSync(join('plans', name), join(folder, name));
    writeFileSync(join(folder, 'rules.yaml'), 'rules: 1\n');
    const [check = ''] = readback(['checkcode', demo]).out.split(/\s/);
    const told = readback(['verify', check, folder]);
    expect(told.status).toBe(0);
    expect(told.out.replace(/\s+/g, ' ')).toContain('the newest kept of that title.');
    expect(told.err).toContain('Passed over');
  });
});

describe('readback compare', () => {
  test('says what changed, and writes only the sheets that are needed, the same bytes each time', () => {
    const folder = emptyFolder();
    const now = fileOf(
      folder,
      'now.yaml',
      readFileSync(demo, 'utf8')
        .replace('revision: 3', 'revision: 4')
        .replace('output: 462.625', 'output: 462.675'),
    );
    const args = ['compare', demo, now, '--out'];
    const { status, out } = readback([...args, join(folder, 'a')]);
    expect(status).toBe(0);
    expect(out).toContain('8 NEIGHB, another channel: receive 462.625 to 462.675');
    expect(out).toContain('worksheets/gmrs-handheld.pdf');
    expect(out).not.toContain('worksheets/murs-handheld.pdf');
    readback([...args, join(folder, 'b')]);
    for (const name of ['change-card.pdf', 'worksheets/gmrs-handheld.pdf'])
      expect(readFileSync(join(folder, 'a', name)).equals(readFileSync(join(folder, 'b', name)))).toBe(true);
  });

  test('a plan against itself has nothing to enter', () => {
    const { out, status } = readback(['compare', demo, demo, '--json']);
    expect(status).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ same: true, channels: [], members: [] });
  });
});

describe('readback import', () => {
  test('puts a roster into a plan and leaves the rest of the file as it was', () => {
    const folder = emptyFolder();
    const text = readFileSync(demo, 'utf8');
    const plan = fileOf(folder, 'plan.yaml', text);
    const table = fileOf(folder, 'r.csv', 'Who,Call,Class,Set,Shoes\nZoe Ash,KX4XZA,General,handheld,40\n');
    const map = fileOf(
      folder,
      'm.yaml',
      'Who: name\nCall: amateur call\nClass: amateur class\nSet: radios\n',
    );
    const { status, err } = readback(['import', table, '--kind', 'roster', '--map', map, '--into', plan]);
    expect(err).toContain('left out: Shoes');
    expect(status).toBe(0);
    const after = readFileSync(plan, 'utf8').split('\n');
    expect(after.filter((line) => !text.split('\n').includes(line)).map((line) => line.trim())).toEqual([
      'zoe:',
      'name: Zoe Ash',
      'licences: { amateur: { class: general, call: KX4XZA } }',
    ]);
  });

  test('without a mapping it asks for one, and with --ask it asks column by column', () => {
    const table = fileOf(emptyFolder(), 'c.csv', 'Ch,Label,RX,Sh\n5,NEW,146.700,-0.6\n');
    expect(readback(['import', table, '--kind', 'channels']).err).toContain('Ch, Label, RX, Sh');
    const asked = readback(['import', table, '--kind', 'channels', '--ask'], {
      stdin: 'slot\nname\nreceve\nreceive\noffset\n',
    });
    expect(asked.err).toContain('Did you mean receive?');
    expect(asked.out).toBe('channels:\n  5: { name: NEW, receive: 146.700, transmit: 146.100 }\n');
  });
});

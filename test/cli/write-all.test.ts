import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { lockFolder } from '../../src/cli/folder-lock.ts';
import { writeAll } from '../../src/cli/write-all.ts';
import { Refusal } from '../../src/findings/refusal.ts';
import { emptyFolder } from './readback.ts';

/** A set of documents with the manifest that names them. */
function documents(entries: Readonly<Record<string, string>>): Map<string, Uint8Array> {
  const manifest = JSON.stringify({ files: Object.keys(entries).map((path) => ({ path })) });
  return new Map(
    Object.entries({ ...entries, 'manifest.json': manifest }).map(([path, text]) => [
      path,
      Buffer.from(text),
    ]),
  );
}

function put(folder: string, path: string, text: string): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

/** Every file below a folder, with what it holds. */
function held(folder: string): Record<string, string> {
  return Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => lstatSync(join(folder, path)).isFile())
      .filter((path) => path !== 'manifest.json')
      .sort()
      .map((path) => [path, readFileSync(join(folder, path), 'utf8')]),
  );
}

async function refusal(work: Promise<void>): Promise<Refusal> {
  const error = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (error instanceof Refusal) return error;
  throw error ?? new Error('nothing was refused');
}

const first = documents({ 'cards/ada.pdf': 'ada 1', 'cards/ben.pdf': 'ben 1', 'list.csv': 'list 1' });
const second = documents({ 'cards/ada.pdf': 'ada 2', 'list.csv': 'list 2' });

test('documents are written into a folder made for them', async () => {
  const folder = join(emptyFolder(), 'out/plan');
  await writeAll(folder, first);
  expect(held(folder)).toEqual({ 'cards/ada.pdf': 'ada 1', 'cards/ben.pdf': 'ben 1', 'list.csv': 'list 1' });
});

test('the next build takes away what the last one wrote and it does not, and nothing else', async () => {
  const folder = emptyFolder();
  put(folder, 'notes.txt', 'mine');
  put(folder, 'cards/ours.pdf', 'mine too');
  await writeAll(folder, first);
  await writeAll(folder, second);
  expect(held(folder)).toEqual({
    'cards/ada.pdf': 'ada 2',
    'cards/ours.pdf': 'mine too',
    'list.csv': 'list 2',
    'notes.txt': 'mine',
  });
});

describe('a build that was interrupted', () => {
  test('before all was written leaves the previous documents, and the next clears up', async () => {
    const folder = emptyFolder();
    await writeAll(folder, first);
    put(folder, '.readback-new/cards/ada.pdf', 'half');
    expect(held(folder)['cards/ada.pdf']).toBe('ada 1');
    await writeAll(folder, second);
    expect(Object.keys(held(folder))).toEqual(['cards/ada.pdf', 'list.csv']);
  });

  test('while documents moved into place is finished by the next', async () => {
    const folder = emptyFolder();
    await writeAll(folder, first);
    // As it stands when the power fails between two renames: the card has moved, the list has not.
    put(folder, 'cards/ada.pdf', 'ada 2');
    put(folder, '.readback-ready/list.csv', 'list 2');
    put(folder, '.readback-ready/manifest.json', Buffer.from(second.get('manifest.json') ?? '').toString());
    const agenda = { move: ['cards/ada.pdf', 'list.csv', 'manifest.json'], remove: ['cards/ben.pdf'] };
    put(folder, '.readback-ready/.agenda.json', JSON.stringify(agenda));
    await refusal(
      writeAll(
        folder,
        new Map([
          ['notes.txt/x', Buffer.from('')],
          ['notes.txt', Buffer.from('')],
        ]),
      ),
    );
    expect(held(folder)).toEqual({ 'cards/ada.pdf': 'ada 2', 'list.csv': 'list 2' });
  });

  test('by a kill at any moment leaves one whole set or the other', async () => {
    const folder = emptyFolder();
    const body = 'x'.repeat(200_000);
    const set = (mark: string) =>
      Object.fromEntries(Array.from({ length: 40 }, (_, index) => [`cards/${index}.pdf`, mark + body]));
    await writeAll(folder, documents(set('1')));
    const script = `
      import { writeAll } from ${JSON.stringify(new URL('../../src/cli/write-all.ts', import.meta.url).href)};
      const files = Object.entries(JSON.parse(process.argv[1])).map(([path, text]) => [path, Buffer.from(text)]);
      setTimeout(() => process.kill(process.pid, 'SIGKILL'), Number(process.argv[2]));
      await writeAll(${JSON.stringify(folder)}, new Map(files));`;
    const small = Object.fromEntries(Object.keys(set('2')).map((path) => [path, '2']));
    for (const afterMs of [0, 4, 8, 15, 30]) {
      spawnSync(process.execPath, [
        '--import',
        'tsx',
        '--input-type=module',
        '-e',
        script,
        JSON.stringify(small),
        String(afterMs),
      ]);
      const marks = () =>
        new Set(
          Object.entries(held(folder))
            .filter(([path]) => path.startsWith('cards/'))
            .map(([, text]) => text[0]),
        );
      // Whatever was decided is finished by the next build, even one that itself is refused.
      await refusal(
        writeAll(
          folder,
          new Map([
            ['a/b', Buffer.from('')],
            ['a', Buffer.from('')],
          ]),
        ),
      );
      expect(marks().size).toBe(1);
      await writeAll(folder, documents(set('1')));
    }
  });
});

describe('what stands in the way is refused before anything is written', () => {
  test('a file where the folder should be', async () => {
    const folder = emptyFolder();
    put(folder, 'out', 'mine');
    expect((await refusal(writeAll(join(folder, 'out'), first))).message).toMatch(/is in the way: a file/);
    expect(held(folder)).toEqual({ out: 'mine' });
  });

  test.each([
    ['a folder where a document should be', (folder: string) => mkdirSync(join(folder, 'list.csv'))],
    ['a file where a folder should be', (folder: string) => put(folder, 'cards', 'mine')],
    [
      'a link where a folder should be',
      (folder: string) => symlinkSync(emptyFolder(), join(folder, 'cards')),
    ],
  ])('%s', async (_, prepare) => {
    const folder = emptyFolder();
    prepare(folder);
    const before = held(folder);
    expect((await refusal(writeAll(folder, first))).message).toMatch(/is in the way/);
    expect(held(folder)).toEqual(before);
    expect(existsSync(join(folder, '.readback-new'))).toBe(false);
  });

  test('a disk without room', async (context) => {
    const folder = emptyFolder();
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', folder], { stdio: 'ignore' });
    } catch {
      // Only the superuser mounts.
      context.skip();
    }
    try {
      await writeAll(folder, first);
      const large = documents({ 'cards/ada.pdf': 'x'.repeat(200_000), 'list.csv': 'x'.repeat(200_000) });
      const { message, remedy } = await refusal(writeAll(folder, large));
      expect(message).toMatch(/no room left/);
      expect(remedy).toMatch(/previous documents are untouched/);
      expect(held(folder)).toEqual({
        'cards/ada.pdf': 'ada 1',
        'cards/ben.pdf': 'ben 1',
        'list.csv': 'list 1',
      });
    } finally {
      execFileSync('umount', [folder]);
    }
  });
});

describe('nothing outside the folder is touched', () => {
  test.each([
    '../victim',
    '/victim',
    'cards/../../victim',
    'link/victim',
    'cards\u0000/victim',
    '.',
    '',
    'kept',
  ])('when the last manifest names %j', async (path) => {
    const parent = emptyFolder();
    const folder = join(parent, 'out');
    put(parent, 'victim', 'whole');
    put(folder, 'kept/own.txt', 'whole');
    symlinkSync(parent, join(folder, 'link'));
    put(folder, 'manifest.json', JSON.stringify({ files: [{ path }, { path: 5 }, {}] }));
    await writeAll(folder, second);
    expect(readFileSync(join(parent, 'victim'), 'utf8')).toBe('whole');
    expect(held(folder)['kept/own.txt']).toBe('whole');
  });

  test.each(['not JSON', '[]', 'null', '{"files": 5}', '{"files": [null]}'])(
    'and a manifest of %j stops no build',
    async (text) => {
      const folder = emptyFolder();
      put(folder, 'manifest.json', text);
      put(folder, '.readback-ready/.agenda.json', text);
      await writeAll(folder, second);
      expect(held(folder)).toEqual({ 'cards/ada.pdf': 'ada 2', 'list.csv': 'list 2' });
    },
  );

  test('when an agenda that somebody laid there names files elsewhere', async () => {
    const parent = emptyFolder();
    const folder = join(parent, 'out');
    put(parent, 'victim', 'whole');
    put(
      folder,
      '.readback-ready/.agenda.json',
      JSON.stringify({ move: ['../taken'], remove: ['../victim'] }),
    );
    await writeAll(folder, second);
    expect(readdirSync(parent).sort()).toEqual(['out', 'victim']);
  });

  test('a link in place of a document is replaced, and what it leads to is left alone', async () => {
    const parent = emptyFolder();
    put(parent, 'elsewhere.csv', 'whole');
    const folder = join(parent, 'out');
    mkdirSync(folder);
    symlinkSync(join(parent, 'elsewhere.csv'), join(folder, 'list.csv'));
    await writeAll(folder, second);
    expect(readFileSync(join(parent, 'elsewhere.csv'), 'utf8')).toBe('whole');
    expect(lstatSync(join(folder, 'list.csv')).isSymbolicLink()).toBe(false);
  });
});

describe('two builds into one folder', () => {
  test('take turns, and leave one whole set', async () => {
    const folder = emptyFolder();
    const sets = Array.from({ length: 6 }, (_, k) =>
      documents(
        Object.fromEntries(Array.from({ length: 20 }, (__, n) => [`${n % 2 === k % 2}/${n}`, `${k}`])),
      ),
    );
    await Promise.all(sets.map((set) => writeAll(folder, set)));
    const contents = Object.entries(held(folder));
    expect(contents).toHaveLength(20);
    expect(new Set(contents.map(([, text]) => text)).size).toBe(1);
  });

  test('do not wait for one that is no more', async () => {
    const folder = emptyFolder();
    const ended = spawnSync(process.execPath, ['-e', '']).pid;
    put(folder, '.readback-busy', String(ended));
    await writeAll(folder, second);
    expect(held(folder)).toEqual({ 'cards/ada.pdf': 'ada 2', 'list.csv': 'list 2' });
  });

  test('wait only so long, and say for what', async () => {
    const folder = emptyFolder();
    put(folder, '.readback-busy', String(process.pid));
    const waited = await refusal(lockFolder(folder, 100).then(() => undefined));
    expect(waited.message).toBe(`Another build is writing into ${folder}.`);
    expect(waited.remedy).toContain('.readback-busy');
  });

  test('a lock without a number is passed over when it is old', async () => {
    const folder = emptyFolder();
    put(folder, '.readback-busy', '');
    const before = new Date(Date.now() - 60_000);
    utimesSync(join(folder, '.readback-busy'), before, before);
    await writeAll(folder, second);
    expect(held(folder)).toEqual({ 'cards/ada.pdf': 'ada 2', 'list.csv': 'list 2' });
  });
});

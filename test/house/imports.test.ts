import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { filesBelow, projectRoot } from './files-below.ts';
import { importFlaws, importsOf } from './import-flaws.ts';
import { outsideWorld } from './outside-world.ts';

const sources = filesBelow('src').filter((file) => file.endsWith('.ts'));
const read = (file: string) => readFileSync(`${projectRoot}/${file}`, 'utf8');

test('a file imports from its own room and from lower floors only', () => {
  expect(sources.length).toBeGreaterThan(20);
  expect(sources.flatMap((file) => importFlaws(file, read(file)))).toEqual([]);
});

test('nothing below cli reaches for the world outside', () => {
  const below = sources.filter((file) => !file.startsWith('src/cli/'));
  expect(
    below.flatMap((file) => outsideWorld(read(file)).map((what) => `${file} reaches for ${what}`)),
  ).toEqual([]);
});

// A test of the house is trusted only once it has been seen to fail.
describe('the test of imports', () => {
  test.each([
    ['src/radio/tone.ts', "import type { Place } from '../findings/finding.ts';", 'one floor'],
    ['src/reach/grid.ts', "import { x } from '../plan/load.ts';", 'below plan'],
    ['src/reach/grid.ts', "import { x } from '../schedule/days.ts';", 'one floor'],
    ['src/checks/offset/unusual.ts', "export { x } from '../../documents/card.ts';", 'below documents'],
    ['src/checks/offset/unusual.ts', "const x = await import('../../cli/main.ts');", 'below cli'],
    ['src/pipeline.ts', "import { main } from './cli/main.ts';", 'below cli'],
    ['src/cli/check.ts', "import { parse } from 'yaml';", 'src/plan/ only'],
    ['src/checks/run.ts', "import type * as z from 'zod';", 'src/plan/ only'],
    ['src/documents/card.ts', "const { default: P } = await import('pdfkit');", 'documents/print/ only'],
    ['src/documents/print/paint.ts', "import { readFile } from 'node:fs/promises';", 'cli only'],
    ['src/plan/load.ts', "import 'node:process';", 'cli only'],
    ['src/radio/tone.ts', "import { createHash } from 'node:crypto';", 'cli only'],
    ['src/radio/tone.ts', "import {\n  a,\n  b,\n} from './dcs.js';", 'real file'],
    ['src/radio/tone.ts', "import { x } from '../../test/x.ts';", 'out of src'],
    ['src/utils/tone.ts', '', 'no room'],
    ['src/radio/tone.ts', "import { x } from '../helpers/x.ts';", 'no room'],
  ])('in %s it fails on %s', (file, text, why) => {
    expect(importFlaws(file, text)).toEqual([expect.stringContaining(why)]);
  });

  test('lets pass what is allowed', () => {
    const text = [
      "import { a } from '../findings/finding.ts';",
      "import { b } from '../plan/load.ts';",
      "import { c } from './own.ts';",
      "import stringWidth from 'string-width';",
      " * import { d } from '../cli/main.ts';",
    ].join('\n');
    expect(importsOf(text)).toHaveLength(4);
    expect(importFlaws('src/checks/run.ts', text)).toEqual([]);
    expect(importFlaws('src/cli/build.ts', "import { rename } from 'node:fs/promises';")).toEqual([]);
    expect(importFlaws('src/plan/plan-check.ts', "import { createHash } from 'node:crypto';")).toEqual([]);
  });

  test.each([
    ['console.log(1);', 'the console'],
    ['const at = Date.now();', 'the clock'],
    ['const at = new Date();', 'the clock'],
    ['const at = Temporal.Now.instant();', 'the clock'],
    ['const x = Math.random();', 'chance'],
    ['const x: string | undefined = process.env["TZ"];', 'the environment'],
    ['const { url } = import.meta;', 'the environment'],
    ['const x = (1).toLocaleString();', 'the locale'],
    ['[].sort((a, b) => a.localeCompare(b));', 'the locale'],
    ['const x = new Intl.NumberFormat();', 'the locale'],
    ['const x = await import(name);', 'code it does not name'],
    ['const x = await fetch("https://example.org");', 'the network'],
  ])('sees that %s reaches for %s', (text, what) => {
    expect(outsideWorld(text)).toEqual([what]);
  });

  test('does not take a comment, a given date or a word of prose for the world outside', () => {
    const text = [
      '/** Never calls console.log() or Date.now(). */',
      'const at = new Date(1_700_000_000_000); // not new Date()',
      "const words = 'a long process. It ends.';",
      'const x = loaded.process.list;',
      "const cells = new Intl.Segmenter('en');",
    ].join('\n');
    expect(outsideWorld(text)).toEqual([]);
  });
});

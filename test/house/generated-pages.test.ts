import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { describedRules } from '../../src/cli/described-rules.ts';
import { everyKey } from '../plan/every-key.ts';
import { projectRoot } from './files-below.ts';
import { generatedPages } from './generated-pages.ts';

const pages = generatedPages();

test.each([...pages.keys()])('%s says what the code says', (path) => {
  const committed = readFileSync(`${projectRoot}/${path}`, 'utf8');
  expect(committed === pages.get(path), `${path} is out of date: run \`npm run generate\``).toBe(true);
});

test('the page of rules tells of the rules that `explain` lists, and of no others', () => {
  const page = pages.get('src/checks/README.md') ?? '';
  expect([...page.matchAll(/^### (\S+)$/gm)].map(([, id]) => id)).toEqual(describedRules.map(({ id }) => id));
  expect(page).toContain(`\n${describedRules.length} rules; `);
});

test('the reference of the language names every key there is', () => {
  const reference = pages.get('src/plan/README.md') ?? '';
  const keys = new Set([...everyKey.matchAll(/(?<=^ {4}|[{,] )([a-z][a-z-]*):/gm)].map((match) => match[1]));
  // Ids, names of settings and services, and lines of a contact are the group's own words.
  for (const own of ['high', 'low', 'amateur', 'gmrs', 'phone', 'door', 'home', 'ridge']) keys.delete(own);
  expect(keys.size).toBeGreaterThan(60);
  expect([...keys].filter((key) => !new RegExp(`[\`.]${key}\``).test(reference))).toEqual([]);
});

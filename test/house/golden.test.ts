import { readdirSync, readFileSync } from 'node:fs';
import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { emptyFolder, readback } from '../cli/readback.ts';
import { expectAccepted } from './accepted.ts';
import { filesBelow, projectRoot } from './files-below.ts';

const plans = readdirSync(`${projectRoot}/plans`).filter((name) => name.endsWith('.yaml'));

describe.each(plans)('plans/%s', (plan) => {
  const name = plan.replace(/\.yaml$/, '');

  test('has no errors, is built, and gives what was accepted', async () => {
    const checked = readback(['check', `plans/${plan}`]);
    expect({ status: checked.status, err: checked.err }, checked.out).toEqual({ status: 0, err: '' });
    const folder = emptyFolder();
    const built = readback(['build', `plans/${plan}`, '--out', folder]);
    expect(built.status, built.err).toBe(0);

    const texts = new Map([['check.txt', checked.out]]);
    for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
      if (/\.(?:csv|ics|txt)$/.test(file)) texts.set(file, readFileSync(`${folder}/${file}`, 'utf8'));
      // Words in their order: where they stand on the page is for the tests of laying out.
      if (file.endsWith('.pdf')) texts.set(`${file}.txt`, await wordsOf(readFileSync(`${folder}/${file}`)));
    }
    expect(texts.size).toBeGreaterThan(2);
    expectAccepted(name, texts);
  });

  test('gives the same bytes twice, in another zone and another folder', () => {
    const [here, there] = [emptyFolder(), emptyFolder()];
    readback(['build', `plans/${plan}`, '--out', here]);
    readback(['build', `${projectRoot}/plans/${plan}`, '--out', there], {
      cwd: there,
      env: { TZ: 'Asia/Kathmandu', LANG: 'de_DE.UTF-8' },
    });
    const bytes = (folder: string) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => `${entry.parentPath}/${entry.name}`)
        .sort()
        .map((file) => [file.slice(folder.length), readFileSync(file).toString('base64')]);
    expect(bytes(here).length).toBeGreaterThan(2);
    expect(bytes(there)).toEqual(bytes(here));
  });
});

test('nothing accepted belongs to a plan that is gone', () => {
  const kept = new Set(filesBelow('test/golden').map((file) => file.split('/')[2]));
  // The pictures of pages are their own test's.
  kept.delete('pictures');
  expect([...kept].filter((name) => !plans.includes(`${name}.yaml`))).toEqual([]);
});

async function wordsOf(pdf: Uint8Array): Promise<string> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false });
  return text.map((page, index) => `--- page ${index + 1}\n${page}\n`).join('');
}

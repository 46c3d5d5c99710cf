import { extractText, getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import { documentSet } from '../../src/documents/document-set.ts';
import { germanPlan } from './german-plan.ts';
import { press, subjectOf } from './press.ts';

/** Which tags with which attributes, and which values, words and widths to write on apart. */
function skeleton(template: string): readonly string[] {
  const parts = [...template.matchAll(/<[^>]*>|\{\{[^}]*\}\}/g)].map(([part]) =>
    part.replace(/ (?:title|caption|says)="[^"]*"/g, ' words').replace(/ mm="\d+"/g, ' mm'),
  );
  return [...new Set(parts)].sort();
}

const [inEnglish, inGerman] = [press('en').templates, press('de').templates];
const translated = [...inGerman].filter(([name, text]) => text !== inEnglish.get(name));

test.each(translated)(
  'the German %s places the same values in the same elements as the English one',
  (name, text) => {
    expect(skeleton(text)).toEqual(skeleton(inEnglish.get(name) ?? ''));
  },
);

test('a plan in German prints its documents in German, with the letters of its names', async () => {
  const { files, flaws } = await documentSet(await subjectOf(germanPlan), press('de'));
  expect(flaws).toEqual([]);
  const document = await getDocumentProxy((files.get('cards.pdf') ?? new Uint8Array()).slice());
  const { text } = await extractText(document, { mergePages: true });
  expect(text).toContain('Jiří Łoś');
  expect(text).toContain('Plankennung');
  expect(text).not.toMatch(/\b(?:Plan check|every day|listen only|calls)\b/);
  expect(new TextDecoder().decode(files.get('booklet.html'))).toContain('<html lang="de">');
});

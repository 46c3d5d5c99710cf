import { extractText, getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import { documentSet } from '../../src/documents/document-set.ts';
import { germanPlan } from './german-plan.ts';
import { press, subjectOf } from './press.ts';

/** Which tags with which attributes, and which values, words and widths to write on apart. */
function skeleton(template: string): readonly string[] {
  const parts = [...template.matchAll(/<[^>]*>|\{\{[^}]*\}\}/g)].map(([part]) =>
    part.replace(/ (?:title|caption|says|word)="[^"]*"/g, ' words').replace(/ mm="\d+"/g, ' mm'),
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

test('what a German booklet must quote in English is marked as English, on paper and on the screen', async () => {
  // Without a tone to open it a repeater on this band is a finding; its departure is accepted.
  const plan = germanPlan.replace(
    'channels:',
    'repeaters:\n  berg: { name: Bergrelais, call: OE0XBG, output: 145.700, offset: -0.5, width: 12.5, place: huette }\nchannels:\n  9: { name: RELAIS, repeater: berg }',
  );
  const subject = await subjectOf(plan);
  const [finding] = subject.findings;
  if (finding === undefined) throw new Error('the plan has no finding');
  const departures = [
    {
      finding: { ...finding, message: 'Offset is odd.' },
      acceptance: { rule: finding.rule, at: 'repeaters', because: 'So zugeteilt', until: '2027-01-01' },
      index: 0,
    },
  ];
  const { files } = await documentSet({ ...subject, departures }, press('de'));
  const page = new TextDecoder().decode(files.get('booklet.html'));
  expect(page).toContain('Die Befunde selbst stehen auf Englisch.');
  const marked = [...page.matchAll(/<td lang="en">(.*?)<\/td>/g)].map(([, words = '']) => words);
  expect(marked).toHaveLength(subject.findings.length + 1);
  expect(marked.at(-1)).toContain('Offset is odd.');
  expect(page.match(/<p lang="en">/g)).toBeNull();

  const pdf = await getDocumentProxy((files.get('booklet.pdf') ?? new Uint8Array()).slice());
  const languages: string[] = [];
  const walk = (node: unknown): void => {
    const { lang, children = [] } = node as { lang?: string; children?: unknown[] };
    if (lang !== undefined) languages.push(lang);
    children.forEach(walk);
  };
  for (let number = 1; number <= pdf.numPages; number += 1)
    walk(await (await pdf.getPage(number)).getStructTree());
  expect(new Set(languages)).toEqual(new Set(['en']));
  expect(languages.length).toBeGreaterThanOrEqual(marked.length);
});

test('a caution that a rules file brings in another language is marked as that', async () => {
  const subject = await subjectOf(germanPlan);
  const country = {
    ...subject.law.country,
    code: 'freedonia',
    language: 'fr',
    caution: 'Vérifiez vous-même.',
  };
  const { files } = await documentSet({ ...subject, law: { ...subject.law, country } }, press('de'));
  expect(new TextDecoder().decode(files.get('booklet.html'))).toContain(
    '<p lang="fr">Vérifiez vous-même.</p>',
  );
});

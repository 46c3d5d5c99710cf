import { readdirSync, readFileSync } from 'node:fs';
import type { BookletSubject } from '../../src/documents/booklet/booklet.ts';
import type { Press } from '../../src/documents/printer.ts';
import { english, type Words, wordsFrom } from '../../src/documents/words.ts';
import { englishLayer, wordsFile } from '../../src/documents/words-file.ts';
import { examine } from '../../src/pipeline.ts';
import { fontBytes } from './print/real-fonts.ts';

const root = new URL('../../', import.meta.url);

/** The program's own templates, in the language of the plan. */
export function press(language = 'en'): Press {
  const templates = new Map<string, string>();
  for (const folder of language === 'en' ? ['templates/'] : ['templates/', `templates/${language}/`]) {
    for (const name of readdirSync(new URL(folder, root)))
      if (name.endsWith('.hbs')) templates.set(name, readFileSync(new URL(folder + name, root), 'utf8'));
  }
  return { fonts: fontBytes, templates, words: wordsIn(language) };
}

export const demoPlan = readFileSync(new URL('plans/hickory-gap.yaml', root), 'utf8');

/** The program's own words. */
export function wordsIn(language = 'en'): Words {
  if (language === 'en') return english;
  const file = `templates/${language}/words.yaml`;
  const content = readFileSync(new URL(file, root), 'utf8');
  const { layer, findings } = wordsFile(content, file, englishLayer(language), { code: '', ids: [] });
  if (layer === undefined) throw new Error(JSON.stringify(findings, null, 1));
  return wordsFrom(layer.list, layer.missing);
}

export const german = wordsIn('de');

/** A plan and all that follows from it, as of a fixed day. */
export async function subjectOf(text: string, withPaths = false): Promise<BookletSubject> {
  const { whole, findings } = await examine(text, 'plan.yaml', {
    today: '2026-11-25',
    withPaths,
    read: async (path) => readFileSync(new URL(`plans/${path}`, root)),
  });
  if (whole === undefined) throw new Error(findings.map(({ message }) => message).join('\n'));
  return { ...whole, findings };
}

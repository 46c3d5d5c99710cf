/** What documents are printed with: typefaces, and the templates and words of the plan's language. */
import { readFileSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type FontBytes, type FontName, fontFiles } from '../documents/print/fonts.ts';
import type { PreparedTemplates } from '../documents/print/render-template.ts';
import type { Press } from '../documents/printer.ts';
import { wordsFrom } from '../documents/words.ts';
import { englishLayer, isEnglish, type WordLayer, wordsFile } from '../documents/words-file.ts';
import { printFindings } from '../findings/print-findings.ts';
import { Refusal } from '../findings/refusal.ts';
import { decode } from '../plan/decode.ts';
import type { Plan } from '../plan/model.ts';
import type { Law } from '../regulations/law.ts';
import { palette } from './palette.ts';
import { columnsOf, displayWidth, type TerminalOptions } from './terminal.ts';

/**
 * The program's templates and words, then those of the plan's language, then those of the user's folder and of
 * its own folder for the language: each in place of the ones before with the same name. What a language lacks then
 * stands in English, and standard error says what.
 *
 * @throws {Refusal} for a folder that cannot be used, for words with mistakes after showing them, and where there is
 * nothing at all in the language
 */
export async function readPress(
  folder: string | undefined,
  { plan, law }: { readonly plan: Plan; readonly law: Law },
  options: TerminalOptions,
): Promise<Press> {
  const language = plan.language ?? 'en';
  const own = ownTemplates();
  const english = await templatesIn(own);
  const templates = new Map(english);
  const inLanguage = new Set<string>();
  let layer: WordLayer = englishLayer(language);
  const lay = async (where: string, inItsOwn: string): Promise<number> => {
    const found = await templatesIn(where);
    for (const [name, text] of found) templates.set(name, text);
    for (const [name] of found) inLanguage.add(name);
    const words = await wordsIn(where);
    if (words === undefined) return found.length;
    layer = await held(words, { ...layer, list: { ...layer.list, language: inItsOwn } }, law, options);
    return found.length + 1;
  };
  let brought = 0;
  if (!isEnglish(language))
    for (const known of new Set([language.split('-')[0] ?? '', language]))
      if (await isFolder(join(own, known))) brought += await lay(join(own, known), known);
  if (folder !== undefined) {
    await refuseStrangers(folder, new Set(templates.keys()));
    const theirs = await lay(folder, language);
    const within = join(folder, language);
    let more = 0;
    if (await isFolder(within)) {
      await refuseStrangers(within, new Set(templates.keys()));
      more = await lay(within, language);
    }
    if (theirs + more === 0)
      throw new Refusal(
        `${folder} holds no .hbs files and no word list.`,
        `Copy those you want to change from ${own}.`,
      );
    brought += theirs + more;
  }
  if (!isEnglish(language)) {
    if (brought === 0)
      throw new Refusal(
        `There are no documents in \`${language}\`, the language of the plan.`,
        `The program has en and ${(await languages(own)).join(', ')}; name a folder with templates and words.yaml for another: --templates DIR.`,
      );
    sayWhatIsMissing(language, templates, inLanguage, layer.missing);
  }
  return {
    fonts: fontBytes(),
    templates,
    ...preparedTemplates(),
    words: wordsFrom({ ...layer.list, language }, layer.missing),
  };
}

/** The program's own templates, as the compiler prepared them. */
declare const READBACK_TEMPLATES: (() => PreparedTemplates) | undefined;

export function preparedTemplates(): { readonly prepared?: PreparedTemplates } {
  return typeof READBACK_TEMPLATES === 'function' ? { prepared: READBACK_TEMPLATES() } : {};
}

async function held(
  { file, content }: { readonly file: string; readonly content: string },
  base: WordLayer,
  { country }: Law,
  options: TerminalOptions,
): Promise<WordLayer> {
  const services = { code: country.code, ids: country.services.map(({ id }) => id) };
  const { layer, findings, text } = wordsFile(content, file, base, services);
  if (layer !== undefined) return layer;
  process.stderr.write(
    printFindings(findings, {
      texts: new Map([[text.file, text]]),
      width: columnsOf(process.stderr),
      palette: palette(process.stderr, options),
      widthOf: await displayWidth([text.text]),
    }),
  );
  throw new Refusal(`${file} could not be read as a word list.`, 'Mend what stands above.');
}

async function refuseStrangers(folder: string, known: ReadonlySet<string>): Promise<void> {
  const theirs = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    throw new Refusal(
      `The templates in ${folder} could not be read: ${error.message}.`,
      'Name a folder of .hbs files with --templates.',
    );
  });
  const stranger = theirs.find((name) => name.endsWith('.hbs') && !name.startsWith('_') && !known.has(name));
  if (stranger !== undefined)
    throw new Refusal(
      `${join(folder, stranger)} has the name of no template.`,
      `Templates are ${[...known].join(', ')}; a part of your own begins with _.`,
    );
}

/** Templates that a document is made from, and texts, for which the language has nothing. */
function sayWhatIsMissing(
  language: string,
  templates: ReadonlyMap<string, string>,
  inLanguage: ReadonlySet<string>,
  words: ReadonlySet<string>,
): void {
  const used = [...templates].filter(
    ([name]) =>
      !name.startsWith('_') ||
      [...templates.values()].some((text) => text.includes(`{{> ${name.replace(/\.hbs$/, '')}}}`)),
  );
  const missing = [
    ...used.map(([name]) => name).filter((name) => !inLanguage.has(name)),
    ...[...words].map((path) => `the words ${path}`),
  ];
  if (missing.length === 0) return;
  const [some, more] = [missing.slice(0, 8).join(', '), missing.length - 8];
  process.stderr.write(
    `Without ${language}, and printed in English: ${some}${more > 0 ? ` and ${more} more` : ''}.\n`,
  );
}

async function templatesIn(folder: string): Promise<[string, string][]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.hbs')).toSorted();
  return Promise.all(
    names.map(async (name): Promise<[string, string]> => [name, await readFile(join(folder, name), 'utf8')]),
  );
}

async function wordsIn(folder: string): Promise<{ file: string; content: string } | undefined> {
  const found = (await readdir(folder)).filter((name) => /^words\.(?:ya?ml|json)$/.test(name)).toSorted();
  const [name, second] = found;
  if (name === undefined) return undefined;
  if (second !== undefined)
    throw new Refusal(`${folder} holds both ${name} and ${second}.`, 'Keep one word list.');
  const file = join(folder, name);
  return { file, content: decode(new Uint8Array(await readFile(file)), file) };
}

async function isFolder(path: string): Promise<boolean> {
  return readdir(path).then(
    () => true,
    () => false,
  );
}

async function languages(own: string): Promise<readonly string[]> {
  const entries = await readdir(own, { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
}

function fontBytes(): FontBytes {
  const { resolve } = createRequire(import.meta.url);
  const bytes = (name: FontName) => () => readFileSync(resolve(fontFiles[name]));
  return {
    regular: bytes('regular'),
    bold: bytes('bold'),
    mono: bytes('mono'),
    'mono-bold': bytes('mono-bold'),
    fallback: bytes('fallback'),
    'fallback-bold': bytes('fallback-bold'),
  };
}

/** The compiled program lies two folders below the package (`out/.program`), as the source does (`src/cli`). */
function ownTemplates(): string {
  return fileURLToPath(new URL('../../templates', import.meta.url));
}

import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Parser } from 'htmlparser2';
import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { projectRoot } from '../house/files-below.ts';
import { demo, emptyFolder, readback } from './readback.ts';

/**
 * A language made up for this test, with a code that ISO 639-2 keeps for local use: English, letter by letter in
 * Greek ones. Whatever still stands in Latin letters in a document is in no template and in no word list.
 */
const language = 'qaa';
const latin = 'abcdefghijklmnopqrstuvwxyz';
const greek = 'αβχδεφγηιψκλμνοπθρστυωξζϑλ';
const inGreek = (text: string) =>
  text.replace(/\{[a-z-]*\}|[a-zA-Z]/g, (found) => {
    const at = latin.indexOf(found.toLowerCase());
    return at === -1 ? found : (greek[at] ?? found);
  });

function translated(value: unknown, key = ''): unknown {
  if (typeof value === 'string') return key === 'guest-card' ? 'q' : inGreek(value);
  if (Array.isArray(value)) return value.map((each) => translated(each));
  return Object.fromEntries(
    Object.entries(value as object).map(([inner, each]) => [inner, translated(each, inner)]),
  );
}

/** Words between the tags, and those of the attributes that are read. */
function translatedTemplate(source: string): string {
  return source
    .split(/(<[^>]*>)/)
    .map((part) =>
      part.startsWith('<')
        ? part.replace(
            /\b(title|caption|says)="([^"]*)"/g,
            (_, name, words) => `${name}="${outsideBraces(words)}"`,
          )
        : outsideBraces(part),
    )
    .join('');
}

function outsideBraces(text: string): string {
  return text
    .split(/(\{\{[^}]*\}\})/)
    .map((part) => (part.startsWith('{{') ? part : inGreek(part)))
    .join('');
}

function bring(folder: string): void {
  const own = join(projectRoot, 'templates');
  for (const name of readdirSync(own).filter((each) => each.endsWith('.hbs')))
    writeFileSync(join(folder, name), translatedTemplate(readFileSync(join(own, name), 'utf8')));
  const list = translated(parse(readFileSync(join(own, 'words.yaml'), 'utf8'))) as { services?: object };
  const services = Object.fromEntries(
    ['amateur', 'gmrs', 'frs', 'murs', 'pmr446', 'weather'].map((id) => [id, inGreek(id)]),
  );
  const general = Object.fromEntries(
    ['technician', 'general', 'extra', 'novice', 'cept'].map((id) => [id, inGreek(id)]),
  );
  const rules = Object.fromEntries(
    ['us', 'eu'].map((code) => [code, { caution: 'χαυτιον.', identify: { amateur: 'ιδεντιφψ.' } }]),
  );
  const limits = { fcc: 'λιμιτς', icnirp: 'λιμιτς' };
  writeFileSync(
    join(folder, 'words.yaml'),
    stringify({
      ...list,
      language,
      services: { ...list.services, ...services },
      classes: { amateur: general },
      rules,
      'exposure-limits': limits,
    }),
  );
}

/** Units, classes of emission, the two sides of a sheet and its guest card: in Latin letters in every language. */
const everywhere = 'Hz MHz kHz GHz W mW dBi dB h min m mm km F E K A B q'.split(' ');

/** The group's own words: every value of the plan, ids of members and radios, names of settings and contacts. */
function ownWords(plan: string): ReadonlySet<string> {
  const words = new Set([...everywhere, language]);
  const add = (text: string) => {
    for (const word of text.match(/[A-Za-z]+/g) ?? []) words.add(word);
  };
  const walk = (value: unknown, key: string): void => {
    if (typeof value === 'string') add(value);
    if (typeof value !== 'object' || value === null) return;
    for (const [inner, each] of Object.entries(value)) {
      if (['members', 'powers', 'contact'].includes(key)) add(inner);
      walk(each, inner);
    }
  };
  walk(parse(plan), '');
  return words;
}

describe.each(['hickory-gap', 'lauterkar-hut'])('%s in a language that the program does not know', (name) => {
  const text = readFileSync(join(projectRoot, 'plans', `${name}.yaml`), 'utf8');
  const plan = text
    .replace(/^ {2}language: .*\n/m, '')
    // The letters of the language are wide.
    .replace(/^ {2}size: .*$/m, '  size: a6')
    .replace(/^ {2}rules:/m, `  language: ${language}\n  rules:`);
  const own = ownWords(plan);
  // The plan check is what it is in every language.
  const strange = (words: string) => [
    ...new Set(
      (words.replace(/\b[A-Z]\d[A-Z]\d\b/g, '').match(/[A-Za-z]+/g) ?? []).filter(
        // Pictures cut a long name short.
        (word) => !own.has(word) && !(word.length > 4 && [...own].some((known) => known.startsWith(word))),
      ),
    ),
  ];
  const build = (...more: readonly string[]) =>
    readback(['build', '-', ...more], { stdin: plan, cwd: join(projectRoot, 'plans') });

  test('is refused without templates and words, and prints nothing in English with them', async () => {
    const folder = emptyFolder();
    const [templates, out] = [join(folder, 'templates'), join(folder, 'out')];
    const refused = build('--out', out);
    expect(refused.status).toBe(2);
    expect(refused.err).toContain('There are no documents in `qaa`');

    mkdirSync(templates);
    bring(templates);
    // An older revision, so that the list of changes is there to be read.
    const old = join(folder, 'old.yaml');
    const before = plan
      .replace(/revision: \d+/, 'revision: 1')
      .replace('output: 146.940', 'output: 146.715')
      .replace('output: 145.6875', 'output: 145.7000')
      .replace('at: "18:30"', 'at: "17:30"');
    writeFileSync(old, before);
    const { status, err } = build('--templates', templates, '--out', out, '--test-sheet', '--since', old);
    expect(status, err).toBe(0);
    expect(err).not.toContain('printed in English');

    const files = readdirSync(out, { recursive: true, encoding: 'utf8' });
    const pdfs = files.filter((each) => each.endsWith('.pdf'));
    expect(pdfs.length).toBeGreaterThan(4);
    for (const file of pdfs.filter((each) => each !== 'booklet.pdf')) {
      const pdf = await getDocumentProxy(new Uint8Array(readFileSync(join(out, file))));
      const { text: words } = await extractText(pdf, { mergePages: true });
      const { info } = await pdf.getMetadata();
      const { Title, Subject } = info as { Title: string; Subject: string };
      expect([file, ...strange(`${words} ${Title} ${Subject}`)]).toEqual([file]);
    }
    const booklet = readFileSync(join(out, 'booklet.html'), 'utf8');
    expect(booklet).toContain(`<html lang="${language}">`);
    expect(strange(wordsOfPage(booklet))).toEqual([]);
    const [columns = ''] = readFileSync(join(out, 'channel-list.csv'), 'utf8').split('\r\n');
    expect(strange(columns)).toEqual([]);
    for (const file of files.filter((each) => each.endsWith('.ics'))) {
      const calendar = readFileSync(join(out, file), 'utf8').replace(/\r\n /g, '');
      const said = [...calendar.matchAll(/^(?:SUMMARY|DESCRIPTION):(.*)$/gm)].map(([, words = '']) => words);
      expect([file, ...strange(said.join(' ').replaceAll('\\n', ' '))]).toEqual([file]);
    }
  });
});

test('what a language lacks is printed in English, and said', () => {
  const folder = emptyFolder();
  const plan = readback(['new', '-']).out.replace(/^ {2}rules:/m, `  language: ${language}\n  rules:`);
  writeFileSync(join(folder, 'words.json'), `{ "language": "${language}", "none": "ουδεν" }`);
  const built = readback(['build', '-', '--templates', folder, '--out', join(folder, 'out')], {
    stdin: plan,
  });
  expect(built.status, built.err).toBe(0);
  expect(built.err).toMatch(/^Without qaa, and printed in English: _card-foot\.hbs, .* and \d+ more\.$/m);
});

test('a folder may hold several languages, each in a folder of its code', async () => {
  const folder = emptyFolder();
  mkdirSync(join(folder, 'de'));
  writeFileSync(join(folder, 'de', 'words.yaml'), 'language: de\ncalls: { other: "{count} Rufe" }\n');
  const [german, out] = [join(projectRoot, 'plans/lauterkar-hut.yaml'), join(folder, 'out')];
  expect(readback(['build', german, '--templates', folder, '--out', out]).status).toBe(0);
  const pdf = await getDocumentProxy(new Uint8Array(readFileSync(join(out, 'cards.pdf'))));
  const { text } = await extractText(pdf, { mergePages: true });
  expect(text).toContain('3 Rufe');
  expect(text).toContain('Plankennung');
  writeFileSync(join(folder, 'de', 'karten.hbs'), '');
  const strange = readback(['build', german, '--templates', folder, '--out', out]);
  expect(strange.err).toContain('karten.hbs has the name of no template.');
});

test('a mistake in a word list is shown at its line, and nothing is written', () => {
  const folder = emptyFolder();
  writeFileSync(
    join(folder, 'words.yaml'),
    'language: en\nuntried: never tried\nheard: { nohting: silence }\n',
  );
  const built = readback(['build', demo, '--templates', folder, '--out', join(folder, 'out')]);
  expect(built.status).toBe(2);
  expect(built.err).toMatch(/words\.yaml:3:10 heard\.nohting/);
  expect(built.err).toContain('write instead: nothing');
  expect(readdirSync(folder)).toEqual(['words.yaml']);
});

test('words of the group take the place of the program’s in a language that it knows', async () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'words.yaml'), 'language: en\ncalls: { other: "{count} shouts" }\n');
  const out = join(folder, 'out');
  expect(readback(['build', demo, '--templates', folder, '--out', out]).status).toBe(0);
  const pdf = await getDocumentProxy(new Uint8Array(readFileSync(join(out, 'cards.pdf'))));
  expect((await extractText(pdf, { mergePages: true })).text).toContain('3 shouts');
});

/** What a reader hears of a page, without the passages that are marked as English. */
function wordsOfPage(page: string): string {
  const words: string[] = [];
  let silent = 0;
  const open: boolean[] = [];
  const parser = new Parser({
    onopentag(tag, attributes) {
      const skipped = tag === 'style' || attributes['lang'] === 'en';
      open.push(skipped);
      if (skipped) silent += 1;
      if (silent === 0) words.push(attributes['aria-label'] ?? '', attributes['alt'] ?? '');
    },
    onclosetag() {
      if (open.pop() === true) silent -= 1;
    },
    ontext(text) {
      if (silent === 0) words.push(text);
    },
  });
  parser.write(page);
  parser.end();
  return words.join(' ');
}

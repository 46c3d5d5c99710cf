/**
 * A word list as a file: `words.yaml`, or `.json`, beside the templates of a language. It holds any part of the list
 * of {@link ./words-en.ts}, and is laid over the one there is for its language. Every mistake has its place.
 */
import type { Finding, PlanPath } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import type { SourceText } from '../findings/source-text.ts';
import { languageFinding, type ReadTree, readTree, shown } from '../plan/read-as.ts';
import { countries } from '../regulations/countries.ts';
import { englishList, type WordList } from './words-en.ts';

/** A list and what of it has no words in its language yet, by path (`script.open`), and stands there in English. */
export interface WordLayer {
  readonly list: WordList;
  readonly missing: ReadonlySet<string>;
}

export interface WordsFile {
  /** Absent where the file has errors. */
  readonly layer?: WordLayer;
  readonly findings: readonly Finding[];
  readonly text: SourceText;
}

/** The English words, for a language: all are missing but in English. */
export function englishLayer(language: string): WordLayer {
  return {
    list: { ...englishList, language },
    missing: new Set(isEnglish(language) ? [] : pathsOf(englishList).filter((path) => path !== 'language')),
  };
}

/**
 * @param file its name as findings show it
 * @param base what it is laid over, in the language that the plan asks for
 * @param services of the country whose rules the plan has, for the keys of what is quoted from them
 */
export function wordsFile(
  content: string,
  file: string,
  base: WordLayer,
  services: { readonly code: string; readonly ids: readonly string[] },
): WordsFile {
  const reading = readTree(content, file, { noun: 'word list', begins: '`language:` and its code' });
  const { root, text, placeOf } = reading;
  const findings: Finding[] = [...reading.findings];
  if (root === undefined || findings.length > 0) return { findings, text };
  const given: string[] = [];
  const list = laidOver(englishList, base.list, root, [], { reading, findings, given, services });
  const own = (root as Tree)['language'];
  const { language } = base.list;
  if (own === undefined)
    findings.push(
      languageFinding(
        'plan/missing-entry',
        'A word list says which language it is in.',
        [],
        placeOf([]),
        `language: ${language}`,
      ),
    );
  else if (own !== language)
    findings.push(
      languageFinding(
        'plan/wrong-value',
        `These words are in ${shown(own)}, and the plan asks for documents in \`${language}\`.`,
        ['language'],
        placeOf(['language']),
      ),
    );
  if (findings.length > 0) return { findings, text };
  const has = new Set(given);
  return {
    // Every branch was held against the English list, which has this type.
    layer: { list: list as WordList, missing: new Set([...base.missing].filter((path) => !has.has(path))) },
    findings,
    text,
  };
}

export function isEnglish(language: string): boolean {
  return /^en(?:-|$)/i.test(language);
}

type Tree = Readonly<Record<string, unknown>>;

interface Holding {
  readonly reading: ReadTree;
  readonly findings: Finding[];
  /** Paths of the texts that the file has. */
  readonly given: string[];
  readonly services: { readonly code: string; readonly ids: readonly string[] };
}

/** Maps whose keys are those of plans and rules. */
const openMaps: ReadonlySet<string> = new Set(['services', 'classes', 'rules', 'exposure-limits']);

/** The base with what stands in the file in its place; what is of another shape than in English is found. */
function laidOver(
  english: unknown,
  base: unknown,
  theirs: unknown,
  path: readonly string[],
  holding: Holding,
): unknown {
  if (path.length === 1 && openMaps.has(path[0] ?? '')) return openMap(base as Tree, theirs, path, holding);
  if (typeof english === 'string') {
    const wanted = path.join('.') === 'language' ? [] : namesIn(english);
    return textOf(base, theirs, path, wanted, holding);
  }
  if (Array.isArray(english)) {
    if (!Array.isArray(theirs) || theirs.length !== english.length)
      return wrong(base, theirs, path, `a list of ${english.length} texts`, holding);
    holding.given.push(path.join('.'));
    return theirs.map((each: unknown, index) => textOf('', each, [...path, String(index)], [], holding));
  }
  if (!isTree(theirs)) return wrong(base, theirs, path, 'a mapping', holding);
  if (isForms(english)) return forms(english, base, theirs, path, holding);
  const known = Object.keys(english as Tree);
  const laid: Record<string, unknown> = { ...(base as Tree) };
  for (const [key, value] of Object.entries(theirs)) {
    if (!known.includes(key)) unknownKey(key, known, path, holding);
    else laid[key] = laidOver((english as Tree)[key], laid[key], value, [...path, key], holding);
  }
  return laid;
}

function openMap(base: Tree, theirs: unknown, path: readonly string[], holding: Holding): Tree {
  const { services } = holding;
  if (!isTree(theirs)) {
    wrong(base, theirs, path, 'a mapping', holding);
    return base;
  }
  const known: Readonly<Record<string, readonly string[]>> = {
    rules: [...countries.map(({ code }) => code), services.code],
    'exposure-limits': ['fcc', 'icnirp'],
  };
  const keys = (at: readonly string[]): readonly string[] | undefined => {
    const [map, code, part] = at;
    if (at.length === 1) return known[map ?? ''];
    if (map !== 'rules') return undefined;
    if (at.length === 2) return ['caution', 'identify'];
    return code === services.code && part === 'identify' ? services.ids : undefined;
  };
  const depth = (at: readonly string[]) =>
    at[0] === 'classes' ? 3 : at[0] !== 'rules' ? 2 : at[2] === 'identify' ? 4 : 3;
  const lay = (under: Tree, mine: Tree, at: readonly string[]): Tree => {
    const laid: Record<string, unknown> = { ...under };
    const allowed = keys(at);
    for (const [key, value] of Object.entries(mine)) {
      const here = [...at, key];
      if (allowed !== undefined && !allowed.includes(key)) unknownKey(key, allowed, at, holding);
      else if (here.length >= depth(here)) laid[key] = textOf('', value, here, [], holding);
      else if (isTree(value)) laid[key] = lay(isTree(laid[key]) ? laid[key] : {}, value, here);
      else wrong('', value, here, 'a mapping', holding);
    }
    return laid;
  };
  return lay(base, theirs, path);
}

/** A text by number: any single numbers and endings, and one for all others. */
function forms(english: Tree, base: unknown, theirs: Tree, path: readonly string[], holding: Holding): Tree {
  const wanted = namesIn(String(english['other']));
  const laid: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(theirs)) {
    if (!/^(?:(?:ends-)?[0-9]+|other)$/.test(key)) unknownKey(key, ['other', '1', 'ends-1'], path, holding);
    // A form for one number may leave the number out: `once`.
    else laid[key] = textOf('', value, [...path, key], wanted, holding, key !== 'other');
  }
  if (laid['other'] === undefined) {
    wrong(base, theirs, path, 'a form for `other` numbers', holding);
    return base as Tree;
  }
  holding.given.push(path.join('.'));
  return laid;
}

function textOf(
  base: unknown,
  theirs: unknown,
  path: readonly string[],
  wanted: readonly string[],
  holding: Holding,
  mayLeaveOut = false,
): unknown {
  if (typeof theirs !== 'string' || theirs.trim() === '' || /[\n\t]/.test(theirs))
    return wrong(base, theirs, path, 'a line of text', holding);
  if (path.join('.') === 'guest-card' && !/^[a-z][a-z0-9-]*$/.test(theirs))
    return wrong(base, theirs, path, 'a short name of small letters, figures and hyphens', holding);
  const names = namesIn(theirs);
  const strange = names.find((name) => !wanted.includes(name));
  const lost = mayLeaveOut ? undefined : wanted.find((name) => !names.includes(name));
  if (strange === undefined && lost === undefined) {
    holding.given.push(path.join('.'));
    return theirs;
  }
  const { findings, reading } = holding;
  const can = wanted.map((name) => `{${name}}`).join(', ') || 'none';
  findings.push(
    languageFinding(
      'plan/wrong-value',
      strange === undefined
        ? `\`{${lost}}\` is left out of this text, and what it stands for would be missing in print.`
        : `There is no \`{${strange}}\` to put into this text; there is ${can}.`,
      path,
      reading.placeOf(path),
    ),
  );
  return base;
}

function wrong(
  base: unknown,
  found: unknown,
  path: readonly string[],
  expected: string,
  { reading, findings }: Holding,
): unknown {
  const message = `Expected ${expected}; found ${shown(found)}.`;
  findings.push(languageFinding('plan/wrong-value', message, path, reading.placeOf(path)));
  return base;
}

function unknownKey(
  key: string,
  known: readonly string[],
  path: PlanPath,
  { reading, findings }: Holding,
): void {
  const at = [...path, key];
  const near = nearest(key, known);
  const message = `\`${key}\` is not a key ${path.length === 0 ? 'of a word list' : `that \`${path.join('.')}\` can have`}.`;
  findings.push(
    languageFinding(
      'plan/unknown-key',
      near === undefined ? `${message} It can have: ${known.join(', ')}.` : message,
      at,
      reading.placeOf(at, 'key'),
      near,
    ),
  );
}

function namesIn(text: string): readonly string[] {
  return [...text.matchAll(/\{([^{}]*)\}/g)].map(([, name = '']) => name);
}

function isTree(value: unknown): value is Tree {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isForms(value: unknown): value is Tree {
  return isTree(value) && Object.hasOwn(value, 'other');
}

/** Every text, list of texts and text by number. */
function pathsOf(value: unknown, path: readonly string[] = []): readonly string[] {
  if (!isTree(value) || isForms(value)) return [path.join('.')];
  return Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]));
}

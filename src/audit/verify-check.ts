/** Whose plan check was read out: a kept revision's, or one that a single slip of voice or pen makes of it. */
import { alikeByEar } from '../radio/confusable.ts';
import { plainSpellingWords, spellingWords } from '../radio/spelling.ts';

export interface KeptRevision {
  /** As the user named the file. */
  readonly file: string;
  readonly title: string;
  readonly revision: number;
  readonly check: string;
}

export interface Verification {
  readonly code: string;
  /** Kept revisions with this very check, the newest first. */
  readonly exact: readonly KeptRevision[];
  /** Those that one slip would make of it, with what was probably meant. */
  readonly near: readonly { readonly kept: KeptRevision; readonly slip: string }[];
  /** The newest of each title that is kept, by title; of the plan with this check alone, where one has it. */
  readonly newest: readonly KeptRevision[];
}

/** `N5L3` of `n5-l3`, of `November Five Lima Three` and of `N Fife L Tree`; undefined for what is no check. */
export function readSpokenCheck(text: string): string | undefined {
  const words = text
    .trim()
    .split(/[\s,.-]+/)
    .filter((word) => word !== '');
  const code = words.map((word) => characters.get(word.toUpperCase()) ?? word.toUpperCase()).join('');
  return /^[A-Z]\d[A-Z]\d$/.test(code) ? code : undefined;
}

const alphabet = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789'];

/** Every word for a character: of the Radio Regulations, of plain English, and as figures are pronounced (common practice). */
const characters: ReadonlyMap<string, string> = new Map([
  ...alphabet.flatMap((character): [string, string][] =>
    [...spellingWords(character), ...plainSpellingWords(character)].map((word) => [
      word.toUpperCase(),
      character,
    ]),
  ),
  ['ALPHA', 'A'],
  ['JULIET', 'J'],
  ['XRAY', 'X'],
  ['TREE', '3'],
  ['FOWER', '4'],
  ['FIFE', '5'],
  ['NINER', '9'],
]);

export function verifyCheck(code: string, kept: readonly KeptRevision[]): Verification {
  const newestFirst = kept.toSorted((a, b) => b.revision - a.revision);
  const near = newestFirst.flatMap((each) => {
    const slip = slipBetween(code, each.check);
    return slip === undefined ? [] : [{ kept: each, slip }];
  });
  const exact = newestFirst.filter(({ check }) => check === code);
  const titles = [...new Set((exact.length > 0 ? exact.slice(0, 1) : kept).map(({ title }) => title))];
  return {
    code,
    exact,
    near,
    newest: titles.toSorted().flatMap((title) => newestFirst.find((each) => each.title === title) ?? []),
  };
}

function slipBetween(heard: string, check: string): string | undefined {
  const at = [...check].flatMap((character, index) => (character === heard[index] ? [] : [index]));
  const [first = 0, second = 0] = at;
  const [meant = '', said = ''] = [check[first], heard[first]];
  const word = (character: string) => plainSpellingWords(character)[0] ?? character;
  if (at.length === 1) {
    const ear = alikeByEar(word(meant), word(said)) || earPairs.has([meant, said].toSorted().join(''));
    return `${word(said)} for ${word(meant)}${ear ? ', which sound alike' : ''}`;
  }
  const exchanged = at.length === 2 && check[first] === heard[second] && check[second] === heard[first];
  return exchanged ? `${word(meant)} and ${word(said)} exchanged` : undefined;
}

/** Letters and figures taken for each other when said bare over a poor channel (common practice). */
const earPairs: ReadonlySet<string> = new Set(
  ['59', 'MN', 'CD', 'CT', 'DT', 'DG', 'GT', 'PT', 'FX', 'JK', 'AH', 'CV', 'DV', 'EG', 'PV', 'AK', 'AJ'].map(
    (pair) => [...pair].toSorted().join(''),
  ),
);

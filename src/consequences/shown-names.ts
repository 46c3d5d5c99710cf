/**
 * Channel names as a radio's display shows them: cut to its length without two becoming the same.
 *
 * A name that fits is kept. Of names that a plain cut would make one, each later one keeps its last
 * characters instead of its middle: `TRAIL EAST` and `TRAIL WEST` become `TRAIL E…`-like forms that still
 * differ. What cannot be told apart at all is for a check to say.
 */
import type { Plan, Radio } from '../plan/model.ts';

export interface ShownName {
  readonly slot: number;
  readonly name: string;
  /** As entered; empty where the radio shows no names. */
  readonly shown: string;
  readonly cut: boolean;
}

export function shownNames(
  plan: Plan,
  radio: Radio,
  slots: readonly number[],
): ReadonlyMap<number, ShownName> {
  const length = radio.nameLength;
  const taken = new Set<string>();
  const names = new Map<number, ShownName>();
  const wanted = slots.flatMap((slot) => {
    const name = plan.channels.get(slot)?.name;
    return name === undefined ? [] : [{ slot, name }];
  });
  // Names that fit are settled first, so that a longer one is never given a shorter one's form.
  for (const { slot, name } of wanted.filter((entry) => [...entry.name].length <= length)) {
    names.set(slot, { slot, name, shown: name, cut: false });
    taken.add(name);
  }
  for (const { slot, name } of wanted.filter((entry) => [...entry.name].length > length)) {
    const shown =
      length === 0
        ? ''
        : ([...forms(name, length)].find((form) => !taken.has(form)) ?? plainCut(name, length));
    names.set(slot, { slot, name, shown, cut: true });
    taken.add(shown);
  }
  return names;
}

export function plainCut(name: string, length: number): string {
  return [...name].slice(0, length).join('').trimEnd();
}

/** Shorter forms of a name, the most readable first. */
function* forms(name: string, length: number): Generator<string> {
  yield plainCut(name, length);
  const letters = [...name];
  const close = letters.filter((letter) => letter !== ' ');
  if (close.length <= length) yield close.join('');
  const withoutVowels = close.filter((letter, index) => index === 0 || !/[AEIOU]/i.test(letter));
  if (withoutVowels.length <= length) yield withoutVowels.join('');
  for (let tail = 1; tail < length; tail++)
    yield close.slice(0, length - tail).join('') + close.slice(-tail).join('');
}

import { listNames } from '../list-names.ts';
import { lacks } from '../needed-radios.ts';
import { commonPractice, rule } from '../rule.ts';

/** A radio without the mode hears noise where others hear a station. */
export const radioNoMode = rule({
  id: 'radio/no-mode',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A channel that members need, in a mode that their radio does not have.',
  why: 'Single sideband, AM and packet cannot be worked with a set for FM voice, though its display shows the frequency.',
  mend: 'Correct the mode, or add it to the radio if it has it; else leave these members out.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 144.220, mode: ssb } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    for (const { radio, on, text, members, because } of lacks(context, 'mode')) {
      yield {
        at: ['channels', on.slot, 'mode'],
        message: `${radio.name} ${text}; ${listNames(members)} need slot ${on.slot}, ${on.name}, for ${because}.`,
      };
    }
  },
});

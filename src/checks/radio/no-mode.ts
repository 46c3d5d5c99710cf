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
    const { mailboxes, digipeaters } = context.plan;
    const stations = new Set([...mailboxes.values(), ...digipeaters.values()].map(({ channel }) => channel));
    for (const { on, text, radioAt } of lacks(context, 'mode')) {
      // A packet channel without a packet station is called by voice, which is found as that.
      if (on.mode === 'packet' && !stations.has(on.slot)) continue;
      yield {
        at: radioAt ?? ['channels', on.slot, 'mode'],
        message: `${text}.`,
      };
    }
  },
});

import { transmitPath } from '../../consequences/planned-signals.ts';
import { lacks } from '../needed-radios.ts';
import { commonPractice, rule } from '../rule.ts';

/** A radio that hears a channel and cannot send on it looks right until its holder has to answer. */
export const radioTransmitRange = rule({
  id: 'radio/transmit-range',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A channel on which members are to transmit, and on which none of their radios can.',
  why: 'They hear their name called and cannot answer; net control takes them for missing.',
  mend: 'Call them on a channel that their radios transmit on, or correct the range.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 446.000, width: 25 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    for (const { on, text, radioAt } of lacks(context, 'transmit-range')) {
      yield {
        at: radioAt ?? transmitPath(on.channel),
        message: `${text}.`,
      };
    }
  },
});

import { formatFrequency } from '../../radio/format-quantity.ts';
import { covered } from '../../regulations/span.ts';
import { commonPractice, rule } from '../rule.ts';

/** A set hears wherever it sends; a range where it would not is a figure in the wrong place. */
export const radioTransmitsOutsideReceives = rule({
  id: 'radio/transmits-outside-receives',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A kind of radio that transmits on a range which it does not receive.',
  why: 'Every ordinary set receives where it transmits. Where the plan says otherwise, a range is mistyped or was left out, and channels will be missing from cards.',
  mend: 'Copy both ranges again from the manual.',
  sources: [commonPractice],
  bad: `
radios:
  handheld:
    name: Handheld
    transmits: [144-148, 420-450] # finding
    receives: [136-174]
    certified: [amateur]
    memories: 1-128
    tones: [ctcss]
    powers: { high: 5 W }`,
  good: `
radios:
  handheld:
    name: Handheld
    transmits: [144-148, 420-450]
    receives: [136-174, 400-480]
    certified: [amateur]
    memories: 1-128
    tones: [ctcss]
    powers: { high: 5 W }`,
  *check({ plan }) {
    for (const { id, name, transmits, receives } of plan.radios.values()) {
      for (const [index, span] of transmits.entries()) {
        if (covered(span, receives)) continue;
        const range = `${formatFrequency(span.fromHz)}-${formatFrequency(span.toHz)} MHz`;
        yield {
          at: ['radios', id, 'transmits', index],
          message: `${name} transmits on ${range} and does not receive all of it.`,
        };
      }
    }
  },
});

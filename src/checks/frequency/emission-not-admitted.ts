import { plannedSignals } from '../../consequences/planned-signals.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** A band is divided by what may be sent in it: voice among Morse is unlawful on a frequency that is otherwise open. */
export const frequencyEmissionNotAdmitted = rule({
  id: 'frequency/emission-not-admitted',
  severity: 'error',
  basis: 'law',
  looksFor: 'Voice, data or Morse on a frequency where the rules admit only other kinds.',
  why: 'Segments are kept for kinds of emission, so that weak Morse is not lost under voice. The licence does not reach beyond them.',
  mend: 'Choose a frequency in a segment for this mode, or the mode that the segment admits.',
  sources: [{ document: '47 CFR part 97', section: '97.305(c)' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: DX, simplex: 144.050, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { law } = context;
    for (const { answer, at, part, name, overshadowed } of plannedSignals(context)) {
      if (part === 'packet station' || overshadowed || answer.may) continue;
      if (answer.why !== 'kind' && answer.why !== 'modulation') continue;
      yield {
        at,
        message: `${name}: ${answer.text}.`,
        ...(answer.row && { source: sourceOf(law, answer.row) }),
      };
    }
  },
});

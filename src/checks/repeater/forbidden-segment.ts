import { barredSegment } from '../../consequences/barred-segment.ts';
import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { localRulesOf, serviceById, sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Segments of weak signals and satellites are closed to repeaters, at their input as at their output. */
export const repeaterForbiddenSegment = rule({
  id: 'repeater/forbidden-segment',
  severity: 'error',
  basis: 'law',
  looksFor: 'A repeater whose output or input reaches into a segment where repeaters may not operate.',
  why: 'Every band has segments that the rules keep free of repeaters. The whole signal counts, so a carrier exactly on the edge is already inside.',
  mend: 'Correct the frequency. If the figures are right, this repeater may not be used.',
  sources: [{ document: '47 CFR part 97', section: '97.205(b)' }],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 145.650, offset: -0.6, tone: 100.0, width: 25 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 145.450, offset: -0.6, tone: 100.0, width: 25 }`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      if (signal.part !== 'output' && signal.part !== 'input') continue;
      const { answer, frequencyHz, occupied, part, at } = signal;
      if (!answer.may && answer.why === 'outside') continue;
      const row = barredSegment(law, signal);
      if (!row || localRulesOf(law, row)) continue;
      const where = `${formatFrequency(row.fromHz)}-${formatFrequency(row.toHz)} MHz, where repeaters of the ${serviceById(law, row.service)?.name} may not operate`;
      const inside = row.fromHz < frequencyHz && frequencyHz < row.toHz;
      const what = part === 'output' ? 'Output' : 'Input';
      const reach = `${formatFrequency(Math.floor(occupied.fromHz))}-${formatFrequency(Math.ceil(occupied.toHz))} MHz`;
      yield {
        at,
        message: inside
          ? `${what} is ${formatFrequency(frequencyHz)} MHz, in ${where}.`
          : `${what} is ${formatFrequency(frequencyHz)} MHz and its signal fills ${reach}, reaching into ${where}.`,
        source: sourceOf(law, row),
      };
    }
  },
});

import { plannedSignals } from '../../consequences/planned-signals.ts';
import { widestSpacingHz } from '../../radio/emission.ts';
import { formatFrequency, formatSpacing } from '../../radio/format-quantity.ts';
import { bandPlanAt } from '../../regulations/band-plan.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';
import { writtenWidthPath } from '../written-width.ts';

/** Where channels stand 12.5 kHz apart, a wide signal sits on three of them. */
export const widthOverBandPlan = rule({
  id: 'width/over-band-plan',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A channel or repeater wider than the band plan has at its frequency.',
  why: 'Band plans space their channels by a width. A wider signal is lawful and is heard in the channels on either side.',
  mend: 'Set the narrower width.',
  sources: [{ document: 'IARU Region 1 VHF band plan', section: 'maximum bandwidth' }],
  bad: `
plan: { title: Example, revision: 1, effective: 2026-12-01, review-by: 2027-12-01, timezone: Europe/Berlin, rules: eu, coordinator: ada }
members:
  ada: { name: Ada Example, radios: [handheld], at: base }
channels:
  1: { name: SIMP, simplex: 145.500, width: 25 } # finding`,
  good: `
plan: { title: Example, revision: 1, effective: 2026-12-01, review-by: 2027-12-01, timezone: Europe/Berlin, rules: eu, coordinator: ada }
members:
  ada: { name: Ada Example, radios: [handheld], at: base }
channels:
  1: { name: SIMP, simplex: 145.500, width: 12.5 }`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      const { answer, on, frequencyHz, part, services } = signal;
      if (part === 'packet station' || part === 'input' || !answer.may || !on.spacingWritten) continue;
      if (!services.includes('amateur')) continue;
      const row = bandPlanAt(law, frequencyHz).find(({ maxWidthHz }) => maxWidthHz !== undefined);
      if (row?.maxWidthHz === undefined || on.occupiedHz <= row.maxWidthHz) continue;
      const { mode } = on;
      const narrowHz = mode === 'fm' || mode === 'packet' ? widestSpacingHz(mode, row.maxWidthHz) : undefined;
      yield {
        at: writtenWidthPath(signal),
        message: `At ${formatSpacing(on.spacingHz)} spacing the signal (${on.emission}) is ${formatSpacing(on.occupiedHz)} wide; the band plan has ${formatSpacing(row.maxWidthHz)} at ${formatFrequency(frequencyHz)} MHz (${row.label}).`,
        ...(narrowHz !== undefined && { suggestion: String(narrowHz / 1000) }),
        source: sourceOf(law, row),
      };
    }
  },
});

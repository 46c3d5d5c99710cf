import { plannedSignals } from '../../consequences/planned-signals.ts';
import { stuckBy } from '../../consequences/stuck.ts';
import { formatFrequency, formatSpacing } from '../../radio/format-quantity.ts';
import { bandPlanAt } from '../../regulations/band-plan.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rastersAt } from '../../regulations/usual-offset.ts';
import { rule } from '../rule.ts';

/** Channels of a band stand on a grid; one between two of them is a slip, or disturbs both neighbours. */
export const frequencyOffRaster = rule({
  id: 'frequency/off-raster',
  severity: 'note',
  basis: 'band plan',
  looksFor:
    'A channel or repeater output that stands on none of the published channel rasters of its segment.',
  why: 'Coordinators place stations on a raster so that neighbours do not overlap. A frequency between two places of it is often a mistyped digit.',
  mend: 'Look at the figure again; take the nearest frequency of the raster if it was chosen freely.',
  sources: [{ document: 'Band plans and channel lists of regional frequency coordinators' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.555, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { law } = context;
    // A frequency that no radio can be tuned to is found as that.
    const untunable = new Set(
      [...stuckBy(context, ['receive-step', 'transmit-step']).values()].map(([{ on }]) => on.receiveHz),
    );
    for (const { answer, at, part, frequencyHz, on } of plannedSignals(context)) {
      if (part === 'packet station' || part === 'input' || !answer.may) continue;
      if (on.mode !== 'fm' || on.published || untunable.has(frequencyHz)) continue;
      const rasters = rastersAt(law, frequencyHz);
      const [first] = rasters;
      if (!first || rasters.some(({ fits }) => fits)) continue;
      const use = bandPlanAt(law, frequencyHz)[0]?.use;
      // One step further there may be the output of a repeater: the nearest is of the same use.
      const near = rasters
        .flatMap(({ row }) =>
          row.stepsHz.flatMap((step) => {
            const steps = Math.floor((frequencyHz - row.fromHz) / step);
            return [steps, steps + 1].map((count) => row.fromHz + count * step);
          }),
        )
        .filter((hz) => bandPlanAt(law, hz)[0]?.use === use)
        .toSorted((a, b) => Math.abs(a - frequencyHz) - Math.abs(b - frequencyHz))[0];
      const steps = [...new Set(rasters.flatMap(({ row }) => row.stepsHz))].map(formatSpacing).join(' or ');
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz stands between the channels, which go in steps of ${steps} here${near === undefined ? '' : `; the nearest is ${formatFrequency(near)} MHz`}.`,
        ...(near !== undefined && { suggestion: formatFrequency(near) }),
        source: sourceOf(law, first.row),
      };
    }
  },
});

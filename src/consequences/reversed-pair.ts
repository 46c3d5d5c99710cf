import type { Repeater } from '../plan/model.ts';
import { bandPlanAt } from '../regulations/band-plan.ts';
import type { BandPlanRow } from '../regulations/country.ts';
import type { Law } from '../regulations/law.ts';

/** Both rows, when a repeater's output stands where the band plan has inputs and its input where it has outputs. */
export function reversedPair(
  law: Law,
  { outputHz, inputHz }: Repeater,
): { readonly output: BandPlanRow; readonly input: BandPlanRow } | undefined {
  const [output] = bandPlanAt(law, outputHz);
  const [input] = bandPlanAt(law, inputHz);
  return output?.use === 'repeater-input' && input?.use === 'repeater-output' ? { output, input } : undefined;
}

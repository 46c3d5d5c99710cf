import type { Repeater } from '../plan/model.ts';
import type { OffsetRow } from '../regulations/country.ts';
import type { Law } from '../regulations/law.ts';
import { usualOffset } from '../regulations/usual-offset.ts';
import { repeaterServices } from './planned-signals.ts';

/** The row that fixes the offset of a repeater by law, where the plan has another; undefined where it has none at all. */
export function brokenOffset(law: Law, repeater: Repeater): OffsetRow | undefined {
  const { outputHz, inputHz } = repeater;
  const row = repeaterServices(law, repeater)
    .map((id) => usualOffset(law, outputHz, id))
    .find((found) => found?.fixed);
  const offsetHz = inputHz - outputHz;
  return row && offsetHz !== 0 && ![...row.usualHz, ...row.alsoHz].includes(offsetHz) ? row : undefined;
}

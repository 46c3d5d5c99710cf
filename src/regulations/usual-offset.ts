import type { OffsetRow, RasterRow } from './country.ts';
import type { Law } from './law.ts';
import { nearby } from './nearby.ts';
import { byWidth, holds } from './span.ts';

/**
 * The usual offset of a repeater by its output. An offset that the rules fix stands first, then a local
 * coordinator's row, then the country's; of several the narrowest.
 */
export function usualOffset(law: Law, outputHz: number, service?: string): OffsetRow | undefined {
  const at = (rows: readonly OffsetRow[]) =>
    rows
      .filter((row) => holds(row, outputHz) && (service === undefined || row.service === service))
      .toSorted(byWidth);
  const national = at(nearby(law.country.offsets, outputHz));
  return (
    national.find((row) => row.fixed) ?? at(law.local.flatMap((rules) => rules.offsets))[0] ?? national[0]
  );
}

/** The rasters published for a frequency, and whether it stands on each. */
export function rastersAt(
  law: Law,
  frequencyHz: number,
): readonly { readonly row: RasterRow; readonly fits: boolean }[] {
  return [...law.local.flatMap((rules) => rules.rasters), ...nearby(law.country.rasters, frequencyHz)]
    .filter((row) => holds(row, frequencyHz))
    .map((row) => ({ row, fits: row.stepsHz.some((step) => (frequencyHz - row.fromHz) % step === 0) }));
}

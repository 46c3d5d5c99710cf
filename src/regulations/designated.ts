import { plainName } from './channels.ts';
import { region1DesignatorHz, region1FormerHz } from './iaru-region-1/designator.ts';
import type { Law } from './law.ts';

/**
 * The frequency a name stands for in the numbering of the country's region, present or former, whether the
 * country has a channel there or not: `U642` is 438.025 MHz in Region 1. Undefined for any other name.
 */
export function designatedHz(law: Law, name: string): number | undefined {
  if (law.country.designators !== 'iaru-region-1') return undefined;
  const plain = plainName(name.slice(0, 64));
  return region1DesignatorHz(plain) ?? region1FormerHz(plain);
}

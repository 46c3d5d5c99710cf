/** A repeater's offset beside what the band plan gives, where the rules leave it to the band plan. */
import type { Repeater } from '../plan/model.ts';
import type { OffsetRow } from '../regulations/country.ts';
import type { Law } from '../regulations/law.ts';
import { serviceOf } from '../regulations/service-of.ts';
import { usualOffset } from '../regulations/usual-offset.ts';
import { reachesBarred } from './barred-segment.ts';
import { repeaterServices } from './planned-signals.ts';
import { reversedPair } from './reversed-pair.ts';

export interface OffsetQuestion {
  readonly offsetHz: number;
  readonly row: OffsetRow;
  /** Whether the offset, sign and all, is one that the row knows. */
  readonly known: boolean;
  /** Whether it would be with the other sign. */
  readonly knownReversed: boolean;
}

/** Undefined where there is no usual offset, or where another rule already says what is wrong: no offset at all, one that leaves the band, a pair the wrong way round, an end where no repeater may be. */
export function offsetQuestion(law: Law, repeater: Repeater): OffsetQuestion | undefined {
  const { outputHz, inputHz } = repeater;
  const services = repeaterServices(law, repeater);
  const row = usualOffset(law, outputHz, services[0]);
  const offsetHz = inputHz - outputHz;
  if (!row || row.fixed || offsetHz === 0) return undefined;
  const inBand = serviceOf(law, inputHz, inputHz).some((service) => services.includes(service));
  if (!inBand || reversedPair(law, repeater)) return undefined;
  if (reachesBarred(law, repeater)) return undefined;
  const sizes = [...row.usualHz, ...row.alsoHz];
  return {
    offsetHz,
    row,
    known: sizes.includes(offsetHz),
    knownReversed: sizes.includes(-offsetHz),
  };
}

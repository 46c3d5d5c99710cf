/** What a frequency outside every service was most likely meant to be, for a channel without a repeater. */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import { type LikelyFrequency, likelyFrequency } from '../radio/likely-frequency.ts';
import { bandPlanAt } from '../regulations/band-plan.ts';
import { channelsOfPair } from '../regulations/channels.ts';
import type { BandPlanUse } from '../regulations/country.ts';
import type { Law } from '../regulations/law.ts';
import { mayTransmit } from '../regulations/may-transmit.ts';
import { serviceOf } from '../regulations/service-of.ts';
import { rastersAt } from '../regulations/usual-offset.ts';

/** Uses of a band plan among which a group's own channel is looked for, best first. */
const fitting: readonly BandPlanUse[] = ['simplex', 'calling', 'packet', 'mixed'];

export function likelyChannelFrequency(
  law: Law,
  on: ChannelParticulars,
  frequencyHz: number,
): LikelyFrequency | undefined {
  return likelyFrequency(frequencyHz, (candidateHz) => {
    const services = serviceOf(law, candidateHz, candidateHz).filter(
      (service) =>
        mayTransmit(law, {
          service,
          frequencyHz: candidateHz,
          widthHz: on.occupiedHz,
          kind: on.kind,
          ...(on.modulation && { modulation: on.modulation }),
        }).may,
    );
    if (services.length === 0) return undefined;
    if (channelsOfPair(law, candidateHz, candidateHz).some((row) => services.includes(row.service))) return 0;
    const rasters = rastersAt(law, candidateHz);
    if (rasters.length > 0 && !rasters.some(({ fits }) => fits)) return undefined;
    const [kept] = bandPlanAt(law, candidateHz);
    if (!kept) return fitting.length + 1;
    const rank = fitting.indexOf(kept.use);
    return rank < 0 ? undefined : rank + 1;
  });
}

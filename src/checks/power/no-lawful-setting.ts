import type { ChannelParticulars } from '../../consequences/channel-particulars.ts';
import { memberKinds } from '../../consequences/member-kinds.ts';
import { refusedSlots } from '../../consequences/planned-signals.ts';
import { radioFit } from '../../consequences/radio-fit.ts';
import { radiatedW, stationKind, type UseReason } from '../../consequences/use.ts';
import type { Radio } from '../../plan/model.ts';
import type { PowerRow, StationKind } from '../../regulations/country.ts';
import type { Law } from '../../regulations/law.ts';
import { powerLimits } from '../../regulations/power-limit.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** Where even the lowest setting is too strong, the radio may not be used on the channel at all. */
export const powerNoLawfulSetting = rule({
  id: 'power/no-lawful-setting',
  severity: 'error',
  basis: 'law',
  looksFor:
    'A radio whose lowest power is more than the rules allow on a channel it would be used on, for members who have no other.',
  why: 'There is no setting at which its holder may transmit there, with this antenna, so their card shows the channel as one to listen to.',
  mend: 'Use another channel or a weaker set; if the radio has a lower setting, add it to its `powers`.',
  sources: [{ document: '47 CFR', section: '95.567, 95.1767, 95.2767 and 97.313' }],
  bad: `
radios:
  handheld: { name: MURS set, transmits: [151-155], receives: [136-174], certified: [murs], memories: 1-16, widths: [12.5, 25], tones: [ctcss], powers: { high: 5 W } } # finding
channels:
  1: { name: FIELD, standard: MURS 2 }
  3: { name: YARD, standard: MURS 3 }`,
  good: `
radios:
  handheld: { name: MURS set, transmits: [151-155], receives: [136-174], certified: [murs], memories: 1-16, widths: [12.5, 25], tones: [ctcss], powers: { high: 5 W, low: 1 W } }
channels:
  1: { name: FIELD, standard: MURS 2 }
  3: { name: YARD, standard: MURS 3 }`,
  *check(context) {
    const { plan, law, consequences } = context;
    const refused = refusedSlots(context);
    const limitsOf = rememberedLimits(law);
    for (const radio of plan.radios.values()) {
      const kinds = memberKinds({ plan, law }).filter(([{ radios }]) => radios.includes(radio.id));
      const channels: string[] = [];
      const members: string[] = [];
      let first: UseReason | undefined;
      for (const on of consequences.channels.values()) {
        if (kinds.length === 0 || refused.has(on.slot) || !mayBeTooStrong(radio, on, limitsOf)) continue;
        const held = kinds.flatMap((kind) => {
          const [{ id }] = kind;
          const reasons = consequences.use(id, radio.id, on.slot)?.reasons ?? [];
          const [reason] = reasons;
          if (reason?.code !== 'power' || reasons.length > 1) return [];
          if (consequences.best(id, on.slot)?.may === 'transmit') return [];
          first ??= reason;
          return kind.map(({ name }) => name);
        });
        if (held.length === 0) continue;
        channels.push(`${on.name} (slot ${on.slot})`);
        members.push(...held);
      }
      if (!first) continue;
      yield {
        at: ['radios', radio.id, 'powers'],
        message: `${radio.name} ${first.text} on ${listNames(channels)}, for ${listNames(members)}.`,
        ...(first.source && { source: first.source }),
      };
    }
  },
});

/** Whether the strictest limit for anybody is below the radio's lowest setting: what is then worth asking member by member. */
function mayBeTooStrong(
  radio: Radio,
  on: ChannelParticulars,
  limitsOf: (on: ChannelParticulars, station: StationKind) => readonly PowerRow[],
): boolean {
  if (on.transmitHz === undefined || radio.powersW.size === 0 || !radioFit(radio, on).transmits) return false;
  const { transmitHz } = on;
  const lowestW = Math.min(...radio.powersW.values());
  return limitsOf(on, stationKind(radio.antenna)).some(
    ({ maxW, measure }) => radiatedW(lowestW, radio.antenna, measure, transmitHz) > maxW,
  );
}

/** Limits of a channel for anybody, remembered: thousands of channels share few frequencies. */
function rememberedLimits(law: Law): (on: ChannelParticulars, station: StationKind) => readonly PowerRow[] {
  const known = new Map<string, readonly PowerRow[]>();
  return ({ transmitHz: frequencyHz = 0, services, kind, modulation }, station) => {
    const key = [frequencyHz, station, kind, modulation ?? '', ...services].join(' ');
    const limits =
      known.get(key) ??
      services.flatMap((service) =>
        powerLimits(law, { service, frequencyHz, station, kind, ...(modulation && { modulation }) }),
      );
    known.set(key, limits);
    return limits;
  };
}

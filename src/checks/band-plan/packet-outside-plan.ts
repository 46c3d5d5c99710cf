import { keptFor } from '../../consequences/kept-for.ts';
import type { Plan } from '../../plan/model.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanRow, BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const forPacket: readonly BandPlanUse[] = ['packet', 'digital', 'mixed', 'link'];
/** These have rules of their own. */
const toldElsewhere: readonly BandPlanUse[] = ['weak-signal', 'cw', 'satellite', 'beacon', 'model-control'];

/** Packet sends on its own accord, day and night; on a voice channel it talks over people who cannot answer it. */
export const bandPlanPacketOutsidePlan = rule({
  id: 'band-plan/packet-outside-plan',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A packet channel where the band plan keeps the frequency for voice or repeaters.',
  why: 'Mailboxes and digipeaters send whenever they have something to send. Voice users there cannot ask them to wait.',
  mend: 'Use one of the packet channels of the band plan, or one that the local coordinator names.',
  sources: [{ document: 'ARRL band plan', section: '2 m packet channels' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: DATA, simplex: 147.540, mode: packet, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: DATA, simplex: 145.010, mode: packet, width: 25 }`,
  *check(context) {
    const spots = context.law.country.bandPlan.filter(({ use }) => use === 'packet' || use === 'digital');
    // A roll call there shows that voice was meant, which is found as that.
    const voice = new Set([...context.plan.checkIns.values()].map(({ channel }) => channel));
    const mail = forMail(context.plan);
    for (const { signal, frequencyHz, row } of keptFor(context)) {
      if (signal.on.mode !== 'packet' || forPacket.includes(row.use) || toldElsewhere.includes(row.use))
        continue;
      if (voice.has(signal.on.slot)) continue;
      // Stations that report positions belong there; mail takes the frequency from them.
      if (row.use === 'positions' && !mail.has(signal.on.slot)) continue;
      // A segment in which the plan itself names packet channels is open to others beside them.
      if (row.fromHz < row.toHz && spots.some((spot) => row.fromHz <= spot.fromHz && spot.toHz <= row.toHz))
        continue;
      const [near] = spots
        .filter(
          ({ band, maxWidthHz }) => band === row.band && signal.on.occupiedHz <= (maxWidthHz ?? Infinity),
        )
        .toSorted((a, b) => away(a, frequencyHz) - away(b, frequencyHz));
      const isSpot = near !== undefined && near.fromHz === near.toHz;
      const where = isSpot
        ? `; its nearest frequency for packet is ${formatFrequency(near.fromHz)} MHz`
        : near &&
          `; its nearest segment for data is ${formatFrequency(near.fromHz)}-${formatFrequency(near.toHz)} MHz`;
      yield {
        at: signal.at,
        message: `Packet at ${formatFrequency(frequencyHz)} MHz lies where the band plan has ${row.label}${where ?? ''}.`,
        ...(isSpot && { suggestion: formatFrequency(near.fromHz) }),
        source: sourceOf(context.law, row),
      };
    }
  },
});

/** Slots on which a mailbox is called. */
function forMail({ mailboxes, ladders }: Plan): ReadonlySet<number> {
  const rungs = [...ladders.values()].flatMap((ladder) => ladder.rungs);
  return new Set([
    ...[...mailboxes.values()].map(({ channel }) => channel),
    ...rungs.flatMap(({ channel, mailbox }) => (mailbox === undefined ? [] : (channel ?? []))),
  ]);
}

function away({ fromHz, toHz }: BandPlanRow, frequencyHz: number): number {
  return Math.max(fromHz - frequencyHz, frequencyHz - toHz, 0);
}

import type { ChannelParticulars } from '../../consequences/channel-particulars.ts';
import type { PlanPath } from '../../findings/finding.ts';
import { channelsOfPair } from '../../regulations/channels.ts';
import type { ChannelRow } from '../../regulations/country.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { type RuleContext, rule } from '../rule.ts';

/** A channel kept for one purpose is kept by the rules, and strangers in need listen there. */
export const serviceRoleOnlyChannel = rule({
  id: 'service/role-only-channel',
  severity: 'error',
  basis: 'law',
  looksFor:
    'A check-in, or the first rungs of a ladder, on a channel that the rules keep for another purpose.',
  why: 'CB 9 is for emergencies and help to travellers, the Australian repeater channel 5 for emergencies; the upper GMRS channels are inputs of repeaters. Everyday calls there are unlawful, and in the way of those it is kept for.',
  mend: 'Take another channel for routine calls; an emergency channel may stand on the last rungs.',
  sources: [{ document: '47 CFR part 95', section: '95.931(a)(2) and 95.1763' }],
  bad: `
radios:
  handheld: { name: CB set, transmits: [26.965-27.405], receives: [26.965-27.405], certified: [cb], memories: 1-40, modes: [am], powers: 4 W }
channels:
  1: { name: CB HELP, standard: CB 9, mode: am }
  3: { name: CB TALK, standard: CB 14, mode: am }
check-ins:
  morning: { name: Morning check-in, channel: 1, at: "07:30", who: all, control: [ada] } # finding
fallbacks:
  first: { name: First, who: all, reach: [ada], rungs: [{ grade: primary, channel: 3 }, { grade: emergency, channel: 1 }] }`,
  good: `
radios:
  handheld: { name: CB set, transmits: [26.965-27.405], receives: [26.965-27.405], certified: [cb], memories: 1-40, modes: [am], powers: 4 W }
channels:
  1: { name: CB HELP, standard: CB 9, mode: am }
  3: { name: CB TALK, standard: CB 14, mode: am }
check-ins:
  morning: { name: Morning check-in, channel: 3, at: "07:30", who: all, control: [ada] }
fallbacks:
  first: { name: First, who: all, reach: [ada], rungs: [{ grade: primary, channel: 3 }, { grade: emergency, channel: 1 }] }`,
  *check(context) {
    const { law, consequences } = context;
    const roles = new Map<number, ChannelRow>();
    for (const on of consequences.channels.values()) {
      const row = roleRow(context, on);
      if (row) roles.set(on.slot, row);
    }
    for (const { slot, at, because, routine } of uses(context)) {
      const row = roles.get(slot);
      if (!row || !(routine || isInput(context, row))) continue;
      yield {
        at,
        message: `${because} is on ${row.name}, which is not for that: ${row.role ?? 'it has another use'}.`,
        source: sourceOf(law, row),
      };
    }
  },
});

/** The row that keeps a channel for one purpose, if every published channel with its pair (a repeater's among them) is kept so. */
function roleRow({ law }: RuleContext, on: ChannelParticulars): ChannelRow | undefined {
  if (on.transmitHz === undefined) return undefined;
  const rows = (on.published ? [on.published] : channelsOfPair(law, on.receiveHz, on.transmitHz)).filter(
    ({ service }) => on.services.includes(service) && serviceById(law, service)?.licence !== 'authority',
  );
  return rows.length > 0 && rows.every(({ roleOnly }) => roleOnly) ? rows[0] : undefined;
}

/** Whether it is what members send to a repeater that is open to all, and so is never used direct, whatever the need. */
function isInput({ law }: RuleContext, row: ChannelRow): boolean {
  return law.country.channels.some(
    ({ service, repeaterInputHz, roleOnly }) =>
      service === row.service &&
      !roleOnly &&
      repeaterInputHz === row.transmitHz &&
      row.transmitHz === row.receiveHz,
  );
}

interface Use {
  readonly slot: number;
  readonly at: PlanPath;
  readonly because: string;
  /** As opposed to what is left when all else failed. */
  readonly routine: boolean;
}

function* uses({ plan }: RuleContext): Generator<Use> {
  for (const { id, name, channel, listen } of plan.checkIns.values())
    if (!listen) yield { slot: channel, at: ['check-ins', id, 'channel'], because: name, routine: true };
  for (const { id, name, rungs } of plan.ladders.values()) {
    for (const [index, { grade, channel }] of rungs.entries()) {
      if (channel === undefined) continue;
      const routine = grade === 'primary' || grade === 'alternate';
      const at = ['fallbacks', id, 'rungs', index, 'channel'];
      yield { slot: channel, at, because: `The ${grade} rung of ${name}`, routine };
    }
  }
}

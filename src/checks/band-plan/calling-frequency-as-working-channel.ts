import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Everybody listens on the calling frequency, so a net on it silences everybody else. */
export const bandPlanCallingFrequencyAsWorkingChannel = rule({
  id: 'band-plan/calling-frequency-as-working-channel',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A roll call held on a calling frequency.',
  why: 'A calling frequency is for making contact and then moving. A net that stays on it keeps travellers, and those in trouble, from being heard.',
  mend: 'Hold the roll call on another simplex channel; listening watches may stay.',
  sources: [{ document: 'ARRL band plan', section: 'national simplex calling frequencies' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: CALLING, simplex: 146.520, width: 25 }
check-ins:
  morning: { name: Morning check-in, channel: 3, at: "07:30", who: all, control: [ada] } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
check-ins:
  morning: { name: Morning check-in, channel: 3, at: "07:30", who: all, control: [ada] }`,
  *check(context) {
    const calling = new Map(
      [...keptFor(context)].flatMap((kept) =>
        kept.row.use === 'calling' ? [[kept.signal.on.slot, kept] as const] : [],
      ),
    );
    for (const { id, name, channel, listen } of context.plan.checkIns.values()) {
      const kept = calling.get(channel);
      if (!kept || listen) continue;
      yield {
        at: ['check-ins', id, 'channel'],
        message: `${name} is held on ${formatFrequency(kept.frequencyHz)} MHz, which the band plan has for ${kept.row.label}.`,
        source: sourceOf(context.law, kept.row),
      };
    }
  },
});

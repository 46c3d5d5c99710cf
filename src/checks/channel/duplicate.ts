import type { ChannelParticulars } from '../../consequences/channel-particulars.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { formatTone } from '../../radio/tone.ts';
import { commonPractice, rule } from '../rule.ts';

/** Two slots for one signal: one was meant to be something else, or members will argue about which to use. */
export const channelDuplicate = rule({
  id: 'channel/duplicate',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'Two slots with the same frequencies and the same tones.',
  why: 'A copied line of which the frequency was never changed looks just like this. Where it is meant, two parties call on what they take for different channels.',
  mend: 'Correct the frequency or tone of one of them, or remove it.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: SIMP 2, simplex: 146.550, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: SIMP 2, simplex: 146.565, width: 25 }`,
  *check({ consequences }) {
    const first = new Map<string, ChannelParticulars>();
    for (const on of consequences.channels.values()) {
      const key = signalKey(on);
      const before = first.get(key);
      if (before === undefined) {
        first.set(key, on);
        continue;
      }
      // Two repeaters on one pair are the finding, not the two channels that lead to them.
      if (before.repeater && on.repeater && before.repeater !== on.repeater) continue;
      const tone = on.tone ? `, tone ${formatTone(on.tone)}` : '';
      yield {
        at: ['channels', on.slot],
        message: `Slot ${on.slot}, ${on.name}, is the same as slot ${before.slot}, ${before.name}: ${formatFrequency(on.receiveHz)} MHz${tone}.`,
      };
    }
  },
});

/**
 * Equal for two channels that are one; one kept twice at two powers is meant so. Digital codes that are one
 * signal under two names are found as such by the rules about tones.
 */
function signalKey({ receiveHz, transmitHz, tone, receiveTone, mode, channel }: ChannelParticulars): string {
  const tones = [tone, receiveTone].map((each) => (each ? formatTone(each) : ''));
  return [receiveHz, transmitHz, ...tones, mode, channel.power].join(' ');
}

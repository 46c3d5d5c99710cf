import { lookKey, soundKey } from '../../radio/confusable.ts';
import { rule } from '../rule.ts';

/** Over a noisy channel some consonants are one sound. */
export const channelNamesAlikeByEar = rule({
  id: 'channel/names-alike-by-ear',
  severity: 'note',
  basis: 'practice',
  looksFor:
    'Two different names that sound alike over a poor channel: P and B, T and D, K and G, F and V, S and Z, M and N.',
  why: 'Names of channels are called out on the air, just when it is hard to hear. Noise hides the difference between such consonants first.',
  mend: 'Change one of the names so that its vowels or its length differ too.',
  sources: [
    {
      document:
        'G. A. Miller and P. E. Nicely, An analysis of perceptual confusions among some English consonants (1955)',
      fromMemory: true,
    },
  ],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: ZIMP, simplex: 146.565, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: CREEK, simplex: 146.565, width: 25 }`,
  *check({ plan }) {
    const first = new Map<string, { slot: number; name: string }>();
    for (const { slot, name } of plan.channels.values()) {
      const key = soundKey(name);
      const before = first.get(key);
      if (before === undefined) {
        if (key !== '') first.set(key, { slot, name });
        continue;
      }
      // Alike by eye as well is found there.

      if (before.name.toUpperCase() !== name.toUpperCase() && lookKey(before.name) !== lookKey(name))
        yield {
          at: ['channels', slot, 'name'],
          message: `${before.name} in slot ${before.slot} and ${name} in slot ${slot} sound alike over a poor channel.`,
        };
    }
  },
});

import { lookKey } from '../../radio/confusable.ts';
import { rule } from '../rule.ts';

/** On a small display some letters and figures are one shape. */
export const channelNamesAlikeByEye = rule({
  id: 'channel/names-alike-by-eye',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'Two different names that look alike on a display: letter O and figure 0, I and L and 1, S and 5, Z and 2, B and 8.',
  why: 'The name is all a member sees when the knob stops. Two that differ only in a shape like O and 0 are one name by headlamp.',
  mend: 'Change one of the names in more than such a letter.',
  sources: [
    {
      document: 'Institute for Safe Medication Practices, Misidentification of alphanumeric symbols',
      fromMemory: true,
    },
  ],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: S1MP, simplex: 146.565, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: CREEK, simplex: 146.565, width: 25 }`,
  *check({ plan }) {
    const first = new Map<string, { slot: number; name: string }>();
    for (const { slot, name } of plan.channels.values()) {
      const key = lookKey(name);
      const before = first.get(key);
      if (before === undefined) {
        if (key !== '') first.set(key, { slot, name });
        continue;
      }
      if (before.name.toUpperCase() !== name.toUpperCase())
        yield {
          at: ['channels', slot, 'name'],
          message: `${before.name} in slot ${before.slot} and ${name} in slot ${slot} look alike on a display.`,
        };
    }
  },
});

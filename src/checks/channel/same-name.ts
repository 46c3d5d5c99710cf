import { commonPractice, rule } from '../rule.ts';

/** A name is how a channel is called out; two of one name send half the group elsewhere. */
export const channelSameName = rule({
  id: 'channel/same-name',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'Two channels with the same name.',
  why: 'Somebody says the name on the air and the group parts: half of them on one slot, half on the other.',
  mend: 'Give each channel its own name.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: Simp, simplex: 146.565, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: CREEK, simplex: 146.565, width: 25 }`,
  *check({ plan }) {
    const first = new Map<string, number>();
    for (const { slot, name } of plan.channels.values()) {
      const key = name.toUpperCase();
      const before = first.get(key);
      if (before === undefined) first.set(key, slot);
      else
        yield {
          at: ['channels', slot, 'name'],
          message: `Slots ${before} and ${slot} are both called ${name}.`,
        };
    }
  },
});

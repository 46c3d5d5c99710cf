import { commonPractice, rule } from '../rule.ts';

/** A channel without a purpose is one more thing to key in wrongly. */
export const channelUnused = rule({
  id: 'channel/unused',
  severity: 'note',
  basis: 'practice',
  looksFor:
    'A channel in no check-in, no ladder and no packet station, and without a word about what it is for.',
  why: 'Every slot is entered by hand into every radio. One that nobody knows a use for costs that work and a line of the card.',
  mend: 'Say in `use` what it is for, or remove it.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: SPARE, simplex: 146.565, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  4: { name: SPARE, simplex: 146.565, width: 25, use: For a second party on the trail }`,
  *check({ plan }) {
    const used = new Set<number | undefined>([
      ...[...plan.checkIns.values()].map(({ channel }) => channel),
      ...[...plan.ladders.values()].flatMap(({ rungs }) => rungs.map(({ channel }) => channel)),
      ...[...plan.mailboxes.values(), ...plan.digipeaters.values()].map(({ channel }) => channel),
    ]);
    for (const { slot, name, use } of plan.channels.values()) {
      if (use === undefined && !used.has(slot))
        yield {
          at: ['channels', slot],
          message: `Nothing uses slot ${slot}, ${name}, and it has no \`use\` that says what it is for.`,
        };
    }
  },
});

import { refusedSlots } from '../../consequences/planned-signals.ts';
import { shortfalls } from '../../consequences/shortfalls.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { commonPractice, rule } from '../rule.ts';

/** A channel that is in no radio takes room on paper and is missed when it is called for. */
export const channelHeldByNobody = rule({
  id: 'channel/held-by-nobody',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A channel that no radio of any member can hold.',
  why: "It lies outside the ranges, modes, steps or slots of every radio in the group, so it is on nobody's card.",
  mend: 'Correct its frequency or slot, or remove it.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  5: { name: AIR, listen: 121.500, use: Aeronautical distress } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  5: { name: WX, listen: 162.550, use: Weather broadcast }`,
  *check(context) {
    const { plan, consequences } = context;
    const carried = [...new Set([...plan.members.values()].flatMap(({ radios }) => radios))].flatMap(
      (id) => plan.radios.get(id) ?? [],
    );
    if (carried.length === 0) return;
    const held = new Set([...plan.radios.keys()].flatMap((radio) => consequences.slotsOf(radio)));
    // A channel that somebody needs is found with what their radio lacks.
    const found = new Set([...refusedSlots(context), ...shortfalls(context).map(({ on }) => on.slot)]);
    for (const { slot, name, receiveHz } of consequences.channels.values()) {
      if (found.has(slot) || held.has(slot)) continue;
      const numbered = carried.some(({ memories }) =>
        memories.some(({ from, to }) => from <= slot && slot <= to),
      );
      yield {
        at: ['channels', slot],
        message: numbered
          ? `No radio of any member can hold slot ${slot}, ${name}, at ${formatFrequency(receiveHz)} MHz.`
          : `No radio of any member has a slot ${slot}, which ${name} is to go into.`,
      };
    }
  },
});

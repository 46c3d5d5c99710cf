import { commonPractice, rule } from '../rule.ts';

/** Nobody can call on a channel where nobody transmits. */
export const ladderListenChannel = rule({
  id: 'ladder/listen-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A rung that calls on a channel which is only listened to.',
  why: 'The rung asks for calls that cannot be made, and its time is lost.',
  mend: 'Choose a channel on which members transmit.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, use: Work }
  9: { name: WX, listen: 162.550, use: Weather broadcast }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 9, calls: 3, within: 10 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan, consequences }) {
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { channel }] of rungs.entries()) {
        const on = channel === undefined ? undefined : consequences.channels.get(channel);
        if (on && on.transmitHz === undefined)
          yield {
            at: ['fallbacks', id, 'rungs', index, 'channel'],
            message: `The rung calls on slot ${on.slot}, ${on.name}, which is only listened to.`,
          };
      }
    }
  },
});

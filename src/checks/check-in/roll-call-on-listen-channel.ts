import { commonPractice, rule } from '../rule.ts';

/** Nobody can answer a roll on a channel where nobody transmits. */
export const checkInRollCallOnListenChannel = rule({
  id: 'check-in/roll-call-on-listen-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A roll call on a channel that is only listened to.',
  why: 'The roll can be neither called nor answered there.',
  mend: 'Choose a channel on which members transmit, or write `listen: true` if it is a watch.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  9: { name: WX, listen: 162.550, use: Weather broadcast }
check-ins:
  morning: { name: Morning check-in, channel: 9, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }`,
  *check({ plan, consequences }) {
    for (const { id, name, listen, channel } of plan.checkIns.values()) {
      const on = consequences.channels.get(channel);
      if (!listen && on && on.transmitHz === undefined)
        yield {
          at: ['check-ins', id, 'channel'],
          message: `${name} has a roll call on slot ${channel}, ${on.name}, which is only listened to.`,
        };
    }
  },
});

import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const plan = `channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  9: { name: WX, standard: WX7 }
check-ins:
  morning: { name: Morning check-in, channel: 9, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 9, within: 5 min }
      - { grade: emergency, meet: base, at: next full hour }
`;

test('a published channel that nobody may send on is only listened to, as one written so', async () => {
  expect(await foundBy('ladder/listen-channel', plan)).toEqual([
    'fallbacks.first.rungs.0.channel: The rung calls on slot 9, WX, which is only listened to.',
  ]);
  expect(await foundBy('check-in/roll-call-on-listen-channel', plan)).toEqual([
    'check-ins.morning.channel: Morning check-in has a roll call on slot 9, WX, which is only listened to.',
  ]);
});

import { expect, test } from 'vitest';
import { example } from './example.ts';

const packet = (checkIns: string) => `
packet:
  mailboxes: { home: { name: Home, call: KX4XAA-10, place: base, channel: 19, power: 25 W } }
  digipeaters: { ridge: { name: Ridge, call: KX4XRG-3, place: hill, channel: 19, power: 10 W } }
  routes:
    - { from: hill, to: home, through: [ridge] }
    - { from: base, to: home, through: [] }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, mode: packet, width: 25 }
check-ins:
${checkIns}
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 19, mailbox: home, through: [ridge], within: 20 min }
`;
const daily = 'days: every day, at: "07:30", who: all, control: [ada], missed: first';

test('each route is reckoned once, with the places and ladders it serves, and a digipeater doubles its channel time and more', async () => {
  const { consequences } = await example(
    packet(`  morning: { name: Morning, channel: 1, lasts: 15 min, ${daily} }`),
  );
  const { routes } = consequences.packetTimes(500);
  expect(routes.map(({ through, fromPlaces, ladders }) => [through, fromPlaces, ladders])).toEqual([
    [['ridge'], ['hill'], ['first']],
    [[], ['base'], []],
  ]);
  const [far, near] = routes;
  expect((far?.time.channelS ?? 0) / (near?.time.channelS ?? 1)).toBeGreaterThan(2);
  expect(near?.windows.map(({ checkIn, lengthMin }) => [checkIn, lengthMin])).toEqual([[undefined, 60]]);
});

test('a quarter of an hour on the packet channel holds what fits into it one after another, and a fifth of that shared', async () => {
  const { consequences } = await example(
    packet(`  bulletin: { name: Bulletin, channel: 19, lasts: 15 min, ${daily} }`),
  );
  const [far] = consequences.packetTimes(500).routes;
  const [window] = far?.windows ?? [];
  expect(window).toMatchObject({ checkIn: 'bulletin', lengthMin: 15 });
  const totalS = far?.time.totalS ?? 0;
  expect((window?.alone ?? 0) * totalS).toBeLessThanOrEqual(900);
  expect(((window?.alone ?? 0) + 1) * totalS).toBeGreaterThan(900);
  // 1/2e of the time, Abramson 1970.
  expect(window?.shared).toBe(Math.floor(900 / (2 * Math.E) / (far?.time.channelS ?? 1)));
});

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { consequencesOf } from '../../src/consequences/consequences.ts';
import { hangings } from '../../src/consequences/hangs-on.ts';
import type { Outage } from '../../src/consequences/outages.ts';
import { waysOf } from '../../src/consequences/ways.ts';
import { lawOf } from '../../src/plan/law-of.ts';
import { load } from '../../src/plan/load.ts';
import { example } from './example.ts';

const hilltop = `
assets:
  feeder: { name: Feeder }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [feeder], backup: 12 h }
packet:
  mailboxes: { home: { name: Home, call: KX4XAA-10, place: base, channel: 19, power: 25 W, depends-on: [feeder], backup: 2 h } }
  digipeaters: { ridge: { name: Ridge, call: KX4XRG-3, place: hill, channel: 19, power: 10 W } }
channels:
  1: { name: GAP, repeater: gap }
  19: { name: PACKET, simplex: 145.010, mode: packet, width: 25 }
check-ins:
  morning: { name: Morning, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: contingency, channel: 19, mailbox: home, through: [ridge], within: 20 min }
      - { grade: emergency, meet: base, at: next full hour }
`;

const found = await example(hilltop);
const { single, double } = found.consequences.outages();
const named = (outages: readonly Outage[], ...keys: string[]) =>
  outages.find(
    ({ failed }) =>
      failed
        .map(({ key }) => key)
        .toSorted()
        .join(' ') === keys.toSorted().join(' '),
  );
const ben = (outage: Outage | undefined) => outage?.members.find(({ member }) => member === 'ben');

test('a fallback on the same hilltop as the first choice leaves only the meeting when the hilltop is lost', () => {
  const outage = named(single, 'place:hill');
  expect(outage?.stopped.map(({ what }) => what.key).toSorted()).toEqual([
    'digipeater:ridge',
    'repeater:gap',
  ]);
  expect(ben(outage)).toMatchObject({
    standing: { what: 'off the air', afterMin: 0 },
    left: [{ ladder: 'first', index: 2 }],
  });
});

test('when the feeder is lost the mailbox stops after 2 h and the repeater after 12 h, and only then is nobody reached', () => {
  const outage = named(single, 'asset:feeder');
  expect(outage?.stopped.map(({ what, afterMin }) => [what.key, afterMin])).toEqual([
    ['mailbox:home', 120],
    ['repeater:gap', 720],
  ]);
  expect(ben(outage)?.rungs.map(({ what, afterMin }) => [what.index, afterMin])).toEqual([
    [0, 720],
    [1, 120],
  ]);
  expect(ben(outage)?.standing).toEqual({ what: 'off the air', afterMin: 720 });
  expect(outage?.checkIns).toEqual([{ what: 'morning', afterMin: 720 }]);
});

test('a dead digipeater ends the rung behind it and nothing else', () => {
  const outage = named(single, 'digipeater:ridge');
  expect(outage?.members.map(({ member }) => member)).toEqual(['ben']);
  expect(ben(outage)?.rungs.map(({ what }) => what.index)).toEqual([1]);
  expect(ben(outage)?.standing).toBeUndefined();
  expect(outage?.checkIns).toEqual([]);
});

test('when the only one to be reached is away the radio reaches nobody, and the check-in has no net control', () => {
  const outage = named(single, 'member:ada');
  expect(ben(outage)?.standing?.what).toBe('off the air');
  expect(outage?.checkIns).toEqual([{ what: 'morning', afterMin: 0 }]);
});

test('repeater and digipeater together put off the air whom neither does alone', () => {
  expect(ben(named(single, 'repeater:gap'))?.standing).toBeUndefined();
  expect(ben(named(double, 'repeater:gap', 'digipeater:ridge'))?.standing).toEqual({
    what: 'off the air',
    afterMin: 0,
  });
});

test('two failures that do no more than one of them are not listed as two', () => {
  expect(named(double, 'place:hill', 'digipeater:ridge')).toBeUndefined();
  // But the hilltop and the meeting place are: then not even a meeting is left.
  expect(ben(named(double, 'place:hill', 'place:base'))?.standing?.what).toBe('cut off');
});

test('things that two rungs of one ladder hang on are named, and what lies under them is not', () => {
  const { shared } = found.consequences.sharedPoints();
  expect(shared.map(({ thing, rungs }) => [thing.key, rungs])).toEqual([
    ['place:hill', [0, 1]],
    ['asset:feeder', [0, 1]],
  ]);
});

// Oracle: fail every one and every two things, end every way that a failed thing ends, and look who has none left.
test('in the demo plan the members put off the air by one or two failures are those that trying them all finds', async () => {
  const loaded = load(readFileSync('plans/hickory-gap.yaml', 'utf8'), 'plan.yaml');
  const plan = loaded.plan;
  if (!plan) throw new Error('The demo plan could not be read.');
  const { law } = await lawOf(plan, loaded, { read: async () => new Uint8Array() });
  if (!law) throw new Error('The demo plan names no rules.');
  const consequences = consequencesOf(plan, law);
  const hangs = hangings(plan);
  const roster = [...plan.members.keys()].map((member) => ({
    member,
    ways: waysOf(plan, consequences, hangs, member).filter(({ radio }) => radio),
  }));
  const off = (...failed: string[]) =>
    roster
      .filter(({ member, ways }) => !failed.includes(`member:${member}`) && ways.length > 0)
      .filter(({ ways }) => ways.every(({ ends }) => failed.some((key) => ends.has(key))))
      .map(({ member }) => member);
  const outages = consequences.outages();
  const offIn = (outage: Outage | undefined) =>
    outage?.members.filter(({ standing }) => standing !== undefined).map(({ member }) => member) ?? [];
  const keys = [...hangs.things.keys()];
  for (const key of keys) expect(offIn(named(outages.single, key)), key).toEqual(off(key));
  fc.assert(
    fc.property(fc.constantFrom(...keys), fc.constantFrom(...keys), (one, other) => {
      const alone = new Set([...off(one), ...off(other)]);
      const worse = off(one, other).filter((member) => !alone.has(member));
      const listed = offIn(named(outages.double, one, other)).filter((member) => !alone.has(member));
      if (one !== other) expect(listed).toEqual(worse);
    }),
    { numRuns: 2000, seed: 8 },
  );
});

test('a member who alone holds two services is the hinge between two parts of the group', async () => {
  const { consequences } = await example(`
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 7, steps: [5], widths: [25, 12.5], tones: [ctcss], powers: { low: 1 W }, antenna: { gain: -5 dBd, height: 1.5 m, carried: hand } }
  murs: { name: MURS, transmits: [151.820-154.600], receives: [136-174], certified: [murs], memories: 1-16, name-length: 0, steps: [5, 2.5], widths: [25, 12.5], tones: [ctcss], powers: { low: 500 mW }, antenna: { gain: -5 dBd, height: 1.5 m, carried: belt } }
members:
  ada: { name: Ada, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben, licences: { amateur: { class: general, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld, murs], at: base }
  cal: { name: Cal, radios: [murs], at: base }
channels:
  3: { name: SIMP, simplex: 146.550, width: 25 }
  11: { name: YARD, standard: MURS 3 }
check-ins: {}
fallbacks: {}
`);
  const { splits, oneChannel, parts } = consequences.sharedPoints();
  expect(parts).toEqual([['ada', 'ben', 'cal']]);
  expect(splits.find(({ thing }) => thing.key === 'member:ben')?.parts).toEqual([['ada'], ['cal']]);
  expect(oneChannel).toEqual([
    { member: 'ada', slot: 3 },
    { member: 'cal', slot: 11 },
  ]);
});

test('a rung that reaches any of two is lost only when both are away', async () => {
  const licence = (call: string) =>
    `licences: { amateur: { class: general, call: ${call}, expires: 2033-02-01 } }, radios: [handheld], at: base`;
  const { consequences } = await example(`
members:
  ada: { name: Ada, ${licence('KX4XAA')} }
  ben: { name: Ben, ${licence('KX4XBB')} }
  cal: { name: Cal, ${licence('KX4XCC')} }
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada, cal]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
`);
  const outages = consequences.outages();
  for (const one of ['member:ada', 'member:cal'])
    expect(ben(named(outages.single, one)), one).toBeUndefined();
  const both = ben(named(outages.double, 'member:ada', 'member:cal'));
  expect(both?.rungs.map(({ what }) => what.index)).toEqual([0, 1]);
  expect(both?.standing).toEqual({ what: 'cut off', afterMin: 0 });
});

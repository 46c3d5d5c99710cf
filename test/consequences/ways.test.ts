import { expect, test } from 'vitest';
import { hangings } from '../../src/consequences/hangs-on.ts';
import { waysOf } from '../../src/consequences/ways.ts';
import { example } from './example.ts';

const amateur = 'licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }';

async function waysIn(piece: string, member: string) {
  const { plan, consequences } = await example(`
members:
  ada: { name: Ada, ${amateur}, radios: [handheld], at: base }
  ben: { name: Ben, ${amateur}, radios: [handheld], at: base }
  cal: { name: Cal, radios: [handheld], at: base }
${piece}`);
  return waysOf(plan, consequences, hangings(plan), member);
}

const ladder = (who: string, reach: string) => `
fallbacks:
  first: { name: First, who: [${who}], reach: [${reach}], rungs: [{ grade: primary, channel: 3, calls: 3, within: 5 min }, { grade: emergency, meet: base, at: noon }] }
`;

// 47 CFR 97.5: whoever holds no licence may not transmit in the amateur service, and so neither calls nor answers.
test('whoever may only listen on a channel has no way by it', async () => {
  const ways = await waysIn(ladder('cal', 'ada'), 'cal');
  expect(ways.filter(({ radio }) => radio)).toEqual([]);
});

test('whoever may only listen cannot answer, and is no way for those who call', async () => {
  const ways = await waysIn(ladder('ada', 'ben, cal'), 'ada');
  expect(ways.filter(({ radio }) => radio).map(({ needs }) => needs)).toEqual([['channel:3', 'member:ben']]);
});

test('a member without a ladder has the channels of their check-ins, over to net control', async () => {
  const ways = await waysIn(ladder('ada', 'ben'), 'ben');
  expect(ways).toMatchObject([
    { checkIn: 'morning', radio: true, needs: ['channel:1', 'repeater:gap', 'member:ada'] },
  ]);
});

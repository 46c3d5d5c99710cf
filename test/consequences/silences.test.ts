import { expect, test } from 'vitest';
import { example } from './example.ts';

async function silencesOf(checkIns: string) {
  const { consequences } = await example(`check-ins:\n${checkIns}`);
  return new Map((await consequences.silences('2026-12-01')).map((silence) => [silence.member, silence]));
}

// By hand: the clocks of New York go back by an hour on 7 November 2027, so that from one 07:30 to the next are 25 hours.
test('called every morning, a member is silent for at most 25 hours, the roll and the ladder', async () => {
  const ben = (
    await silencesOf(
      '  morning: { name: Morning, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }',
    )
  ).get('ben');
  // The ladder of the example gives 5 and 10 minutes, and none to its meeting.
  expect(ben?.longest).toMatchObject({
    gapMin: 25 * 60,
    rollMin: 15,
    ladder: 'first',
    ladderMin: 15,
    untimedRungs: 1,
    totalMin: 25 * 60 + 30,
  });
  expect(ben?.lastCalled).toBeUndefined();
});

test('called on Monday and Thursday evenings, four days pass from Thursday to Monday, an hour more in November', async () => {
  const ben = (
    await silencesOf(
      '  round: { name: Round, channel: 1, days: [mon, thu], at: "19:00", lasts: 10 min, who: all, control: [ada] }',
    )
  ).get('ben');
  expect(ben?.longest).toMatchObject({ gapMin: 97 * 60, ladderMin: 0, totalMin: 97 * 60 + 10 });
  // Monday evening in New York is Tuesday in UTC.
  expect(ben?.longest?.date).toBe('2027-11-08');
});

test('a listening watch notices nobody', async () => {
  const found = await silencesOf(
    '  watch: { name: Watch, listen: true, channel: 3, days: every day, at: "07:00", until: "19:00", repeats: 3 h, lasts: 5 min, who: all }',
  );
  expect(found.get('ben')).toEqual({ member: 'ben', calledBy: [] });
});

test('two check-ins a day halve the silence of those whom both call, and of nobody else', async () => {
  const found = await silencesOf(
    '  morning: { name: Morning, channel: 1, days: every day, at: "07:00", lasts: 15 min, who: all, control: [ada] }\n' +
      '  evening: { name: Evening, channel: 1, days: every day, at: "19:00", lasts: 15 min, who: [ben], control: [ben] }',
  );
  expect(found.get('ben')?.longest?.gapMin).toBe(13 * 60);
  expect(found.get('ada')?.longest?.gapMin).toBe(25 * 60);
});

test('net control who is not on the roll is missed only when it is their turn', async () => {
  const found = await silencesOf(
    '  morning: { name: Morning, channel: 1, days: every day, at: "07:00", lasts: 15 min, who: [ben], control: [ada, ben], turn: week }',
  );
  // From Sunday of one turn to Monday of the next; the clocks change within turns, at 02:00 on a Sunday.
  expect(found.get('ada')?.longest?.gapMin).toBe(8 * 24 * 60);
});

test('after a series has ended nobody notices any more, and the last call is named', async () => {
  const ben = (
    await silencesOf(
      '  course: { name: Course, channel: 1, days: "FREQ=WEEKLY;COUNT=4;BYDAY=SA", at: "09:00", lasts: 15 min, who: all, control: [ada] }',
    )
  ).get('ben');
  expect(ben?.lastCalled).toBe('2026-12-26');
});

// By hand: from 02:30 EST on 13 March 2027 to 02:30 EDT on the 15th, the 14th having no 02:30 in New York.
test('a check-in that the clocks leave out is missed by all, and the silence is two days less an hour', async () => {
  const ben = (
    await silencesOf(
      '  late: { name: Late, channel: 1, days: every day, at: "02:30", lasts: 15 min, who: all, control: [ada] }',
    )
  ).get('ben');
  expect(ben?.longest).toMatchObject({ gapMin: 47 * 60, date: '2027-03-15' });
});

import { expect, test } from 'vitest';
import { example } from './example.ts';

const clock = (minute: number) =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

async function held(checkIns: string, from: string, to: string) {
  const { consequences } = await example(`check-ins:\n${checkIns}`);
  return consequences.occurrences(from, to);
}

// IANA time zone database: America/New_York goes to -04:00 at 2027-03-14T07:00Z.
test('a check-in keeps its time on the clocks and moves by an hour in UTC when the clocks change', async () => {
  const found = await held(
    '  morning: { name: Morning, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }',
    '2027-03-13',
    '2027-03-14',
  );
  expect(
    found.map(({ local, utc }) => [local.date, clock(local.minute), local.offsetMin, clock(utc.minute)]),
  ).toEqual([
    ['2027-03-13', '07:30', -300, '12:30'],
    ['2027-03-14', '07:30', -240, '11:30'],
  ]);
});

test('a check-in in UTC keeps its time in UTC and moves on the clocks', async () => {
  const found = await held(
    '  net: { name: Net, channel: 1, days: every day, at: "01:00Z", lasts: 15 min, who: all, control: [ada], missed: first }',
    '2027-03-14',
    '2027-03-15',
  );
  expect(
    found.map(({ local, utc }) => [local.date, clock(local.minute), utc.date, clock(utc.minute)]),
  ).toEqual([
    ['2027-03-13', '20:00', '2027-03-14', '01:00'],
    ['2027-03-14', '21:00', '2027-03-15', '01:00'],
  ]);
});

test('net control passes on each Monday, and the plan check is read by another than net control', async () => {
  const found = await held(
    '  round: { name: Round, channel: 1, days: [mon, thu], at: "19:00", lasts: 15 min, who: all, control: [ben, ada], turn: week, missed: first }',
    '2026-12-01',
    '2026-12-17',
  );
  // 1 December 2026 is a Tuesday.
  expect(found.map(({ date, control, reader }) => [date, control, reader])).toEqual([
    ['2026-12-03', 'ben', 'ada'],
    ['2026-12-07', 'ada', 'ben'],
    ['2026-12-10', 'ada', 'ben'],
    ['2026-12-14', 'ben', 'ada'],
    ['2026-12-17', 'ben', 'ada'],
  ]);
});

test('nothing is held before the plan takes effect', async () => {
  const found = await held(
    '  morning: { name: Morning, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }',
    '2026-11-20',
    '2026-12-01',
  );
  expect(found.map(({ date }) => date)).toEqual(['2026-12-01']);
});

test('a watch past midnight begins on the next date, and nobody reads the plan check in it', async () => {
  const found = await held(
    '  night: { name: Night watch, listen: true, channel: 3, days: [fri], at: "22:00", until: "02:00", repeats: 2 h, lasts: 5 min, who: all }',
    '2026-12-05',
    '2026-12-05',
  );
  // 5 December 2026 is a Saturday: what is left of the watch that began on Friday.
  expect(found.map(({ date, minute, reader }) => [date, clock(minute), reader])).toEqual([
    ['2026-12-05', '00:00', undefined],
    ['2026-12-05', '02:00', undefined],
  ]);
});

test('a check-in on the second Sunday of the month at an hour that the clocks leave out says so', async () => {
  const found = await held(
    '  net: { name: Net, channel: 1, days: "FREQ=MONTHLY;BYDAY=2SU", at: "02:30", lasts: 15 min, who: all, control: [ada], missed: first }',
    '2027-02-01',
    '2027-04-30',
  );
  expect(found.map(({ date, moment }) => [date, moment.kind])).toEqual([
    ['2027-02-14', 'once'],
    ['2027-03-14', 'gap'],
    ['2027-04-11', 'once'],
  ]);
});

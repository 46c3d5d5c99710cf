import { expect, test } from 'vitest';
import { clockChanges20262027, unchangedZones } from '../../sources/schedule/clock-changes-2026-2027.ts';
import { foundBy } from '../found-by.ts';

const plan = (zone: string, at: string, days = 'every day', from = '2026-01-01', to = '2027-12-31') => `
plan: { title: Example, revision: 1, effective: ${from}, review-by: ${to}, timezone: ${zone}, rules: us, coordinator: ada }
check-ins:
  night: { name: Night check-in, channel: 1, days: ${days}, at: "${at}", lasts: 10 min, who: all, control: [ada], missed: first }`;

const clock = (minute: number) =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
const minuteOf = (text: string) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));

test.each(clockChanges20262027)(
  'in %s a check-in in the changed hour (%s, %s) is found, and one after it is not',
  async (zone, _, date, oldClock, newClock) => {
    const [first = 0, after = 0] = [minuteOf(oldClock), minuteOf(newClock)].sort((x, y) => x - y);
    const what = newClock > oldClock ? 'does not exist' : 'comes twice';
    // One day long, so that only this change lies in it.
    const found = (minute: number) =>
      foundBy('check-in/clock-change', plan(zone, clock(minute), 'every day', date, date));
    expect(await found((first + after) / 2)).toEqual([
      `check-ins.night.at: ${clock((first + after) / 2)} in ${zone} ${what} on ${date}, when the clocks change.`,
    ]);
    expect(await found(first)).toHaveLength(1);
    expect(await found(after)).toEqual([]);
  },
);

test.each(unchangedZones)('%s has no hour to avoid', async (zone) => {
  for (const at of ['01:30', '02:30'])
    expect(await foundBy('check-in/clock-change', plan(zone, at))).toEqual([]);
});

test('02:30 in New York is found for both springs of two years, and not if it is not held on Sundays', async () => {
  expect(await foundBy('check-in/clock-change', plan('America/New_York', '02:30'))).toEqual([
    'check-ins.night.at: 02:30 in America/New_York does not exist on 2026-03-08 and does not exist on 2027-03-14, when the clocks change.',
  ]);
  expect(await foundBy('check-in/clock-change', plan('America/New_York', '02:30', 'weekdays'))).toEqual([]);
  expect(
    await foundBy('check-in/clock-change', plan('America/New_York', '02:30', 'FREQ=MONTHLY;BYDAY=2SU')),
  ).toHaveLength(1);
  expect(
    await foundBy('check-in/clock-change', plan('America/New_York', '02:30', 'FREQ=MONTHLY;BYDAY=3SU')),
  ).toEqual([]);
});

test('a check-in in UTC loses no hour', async () => {
  expect(await foundBy('check-in/clock-change', plan('America/New_York', '02:30Z'))).toEqual([]);
});

test('a review in the far future changes nothing in what is said', async () => {
  const found = (to: string) =>
    foundBy('check-in/clock-change', plan('America/New_York', '02:30', 'every day', '2026-01-01', to));
  expect(await found('9999-12-31')).toEqual(await found('2029-12-31'));
});

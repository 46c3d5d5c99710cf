import { expect, test } from 'vitest';
import { loadRecurrence } from '../../src/schedule/recurrence.ts';
import { type Series, seriesTimes } from '../../src/schedule/series.ts';
import { zoneOffset } from '../../src/schedule/zone-offset.ts';

const newYork = zoneOffset('America/New_York');
const nine = 9 * 60;
const datesOf = await loadRecurrence();

function dates(rrule: string, start: string, from: string, to: string, minute = nine): readonly string[] {
  const series: Series = { days: { kind: 'recurrence', rrule }, minutes: [minute], utc: false };
  return seriesTimes(series, start, from, to, newYork, datesOf).map(({ date }) => date);
}

// RFC 5545 (September 2009), 3.8.5.3, examples; all begin at 09:00 in America/New_York.
test.each([
  ['daily for 10 occurrences', 'FREQ=DAILY;COUNT=10', '1997-09-02', 'Sep 2-11'],
  ['every other day', 'FREQ=DAILY;INTERVAL=2', '1997-09-02', 'Sep 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30'],
  ['every 10 days, 5 occurrences', 'FREQ=DAILY;INTERVAL=10;COUNT=5', '1997-09-02', 'Sep 2,12,22; Oct 2,12'],
  [
    'weekly for 10 occurrences',
    'FREQ=WEEKLY;COUNT=10',
    '1997-09-02',
    'Sep 2,9,16,23,30; Oct 7,14,21,28; Nov 4',
  ],
  [
    'every other week',
    'FREQ=WEEKLY;INTERVAL=2;WKST=SU',
    '1997-09-02',
    'Sep 2,16,30; Oct 14,28; Nov 11,25; Dec 9,23',
  ],
  [
    'weekly on Tuesday and Thursday for five weeks',
    'FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH',
    '1997-09-02',
    'Sep 2,4,9,11,16,18,23,25,30; Oct 2',
  ],
  [
    'every other week on Monday, Wednesday, Friday until 24 December',
    'FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR',
    '1997-09-01',
    'Sep 1,3,5,15,17,19,29; Oct 1,3,13,15,17,27,29,31; Nov 10,12,14,24,26,28; Dec 8,10,12,22',
  ],
  [
    'monthly on the first Friday until 24 December',
    'FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR',
    '1997-09-05',
    'Sep 5; Oct 3; Nov 7; Dec 5',
  ],
  [
    'every other month on the first and last Sunday',
    'FREQ=MONTHLY;INTERVAL=2;COUNT=6;BYDAY=1SU,-1SU',
    '1997-09-07',
    'Sep 7,28; Nov 2,30',
  ],
  [
    'monthly on the third to last day',
    'FREQ=MONTHLY;BYMONTHDAY=-3',
    '1997-09-28',
    'Sep 28; Oct 29; Nov 28; Dec 29',
  ],
  [
    'the third of Tuesday, Wednesday or Thursday in the month',
    'FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3',
    '1997-09-04',
    'Sep 4; Oct 7; Nov 6',
  ],
  [
    'the second to last weekday of the month',
    'FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2',
    '1997-09-29',
    'Sep 29; Oct 30; Nov 27; Dec 30',
  ],
])('%s', (_, rrule, start, expected) => {
  const to = expected.endsWith('30') && !expected.includes(';') ? '1997-09-30' : '1997-12-31';
  expect(dates(rrule, start, start, to)).toEqual(spelledOut(expected));
});

/** `Sep 2-4; Oct 2,12` of 1997 as ISO dates. */
function spelledOut(text: string): readonly string[] {
  return text.split('; ').flatMap((month) => {
    const [name = '', days = ''] = month.split(' ');
    const number = { Sep: '09', Oct: '10', Nov: '11', Dec: '12' }[name];
    return days.split(',').flatMap((day) => {
      const [first, last = first] = day.split('-').map(Number);
      return Array.from(
        { length: Number(last) - Number(first) + 1 },
        (_, index) => `1997-${number}-${String(Number(first) + index).padStart(2, '0')}`,
      );
    });
  });
}

// RFC 5545, 3.8.5.3, "Daily until December 24, 1997" goes from EDT to EST on 26 October.
test('09:00 stays 09:00 on the clocks when summer time ends', () => {
  const series: Series = {
    days: { kind: 'recurrence', rrule: 'FREQ=DAILY;UNTIL=19971224T000000Z' },
    minutes: [nine],
    utc: false,
  };
  const times = seriesTimes(series, '1997-09-02', '1997-10-25', '1997-12-31', newYork, datesOf);
  expect(times.map(({ moment }) => new Date(moment.instantMs).toISOString()).slice(0, 2)).toEqual([
    '1997-10-25T13:00:00.000Z',
    '1997-10-26T14:00:00.000Z',
  ]);
  expect(times.at(-1)?.date).toBe('1997-12-23');
});

test('an end at an instant is held against the instant, not the date', () => {
  // 09:00 in New York on 3 September 1997 is 13:00 UTC.
  expect(dates('FREQ=DAILY;UNTIL=19970903T130000Z', '1997-09-02', '1997-09-02', '1997-09-30')).toHaveLength(
    2,
  );
  expect(dates('FREQ=DAILY;UNTIL=19970903T125959Z', '1997-09-02', '1997-09-02', '1997-09-30')).toHaveLength(
    1,
  );
  // In the evening the date in UTC is already the next one.
  expect(
    dates('FREQ=DAILY;UNTIL=19970903T010000Z', '1997-09-02', '1997-09-02', '1997-09-30', 21 * 60),
  ).toEqual(['1997-09-02']);
  expect(dates('FREQ=DAILY;UNTIL=19970903T085900', '1997-09-02', '1997-09-02', '1997-09-30')).toEqual([
    '1997-09-02',
  ]);
  expect(dates('FREQ=DAILY;UNTIL=19970903', '1997-09-02', '1997-09-02', '1997-09-30')).toEqual([
    '1997-09-02',
    '1997-09-03',
  ]);
});

test('days of the week and the rule that says the same are the same times, with the same counts', () => {
  const plain: Series = { days: { kind: 'weekdays', isoDays: [1, 4] }, minutes: [nine, 25 * 60], utc: false };
  const ruled: Series = { ...plain, days: { kind: 'recurrence', rrule: 'FREQ=WEEKLY;BYDAY=MO,TH' } };
  const one = seriesTimes(plain, '2026-12-01', '2027-03-01', '2027-04-01', newYork);
  // Five Mondays and four Thursdays of March, and Thursday 1 April, twice each.
  expect(one.length).toBe(20);
  expect(seriesTimes(ruled, '2026-12-01', '2027-03-01', '2027-04-01', newYork, datesOf)).toEqual(one);
  // Before Monday 1 March lie 13 Thursdays, from 3 December, and 12 Mondays, from 7 December.
  expect(one[0]).toMatchObject({ date: '2027-03-01', daysBefore: 25, timesBefore: 50 });
  expect(one[1]).toMatchObject({ date: '2027-03-02', minute: 60, daysBefore: 25, timesBefore: 51 });
});

test('a check-in at 02:30 is not moved in silence on the morning the clocks go forward', () => {
  const series: Series = { days: { kind: 'weekdays', isoDays: [7] }, minutes: [150], utc: false };
  const kinds = seriesTimes(series, '2026-12-01', '2027-03-07', '2027-03-21', newYork).map(
    ({ moment }) => moment.kind,
  );
  expect(kinds).toEqual(['once', 'gap', 'once']);
});

test('times written in UTC know no clock changes', () => {
  const series: Series = { days: { kind: 'weekdays', isoDays: [7] }, minutes: [150], utc: true };
  const [time] = seriesTimes(series, '2026-12-01', '2027-03-14', '2027-03-14', newYork);
  expect(time?.moment).toEqual({ kind: 'once', instantMs: Date.parse('2027-03-14T02:30Z') });
});

import { expect, test } from 'vitest';
import { beginsOn, weekdaysOf } from '../../src/consequences/starts.ts';

const recurrence = (rrule: string) => ({ kind: 'recurrence' as const, rrule });

// RFC 5545 (September 2009), 3.8.5.3, examples of monthly rules, with the dates printed there.
test.each([
  ['FREQ=MONTHLY;BYDAY=1FR', ['1997-09-05', '1997-10-03', '1997-11-07'], ['1997-09-12', '1997-09-06']],
  ['FREQ=MONTHLY;BYDAY=-2MO', ['1997-09-22', '1997-10-20', '1997-11-17'], ['1997-09-29', '1997-09-15']],
  ['FREQ=MONTHLY;BYDAY=1SU,-1SU', ['1997-09-07', '1997-09-28'], ['1997-09-14', '1997-09-21']],
])('%s falls on the dates of the standard', (rrule, dates, others) => {
  for (const date of dates) expect([date, beginsOn(recurrence(rrule), date)]).toEqual([date, true]);
  for (const date of others) expect([date, beginsOn(recurrence(rrule), date)]).toEqual([date, false]);
});

test('a rule whose weeks differ is not taken for a weekly one', () => {
  expect(weekdaysOf(recurrence('FREQ=WEEKLY;BYDAY=MO,TH'))).toEqual([1, 4]);
  expect(weekdaysOf(recurrence('FREQ=WEEKLY;INTERVAL=2;BYDAY=MO'))).toBeUndefined();
  expect(weekdaysOf(recurrence('FREQ=WEEKLY'))).toBeUndefined();
  expect(beginsOn(recurrence('FREQ=WEEKLY;INTERVAL=2;BYDAY=SU'), '2026-03-08')).toBe(false);
});

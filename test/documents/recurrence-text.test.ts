import { expect, test } from 'vitest';
import { recurrenceText } from '../../src/documents/recurrence-text.ts';
import { english } from '../../src/documents/words.ts';
import { german } from './press.ts';

// Rules after the examples of RFC 5545, 3.8.5.3, with what each of them is said to mean there.
test.each([
  ['FREQ=DAILY', 'every day', 'täglich'],
  ['FREQ=DAILY;INTERVAL=2', 'every 2nd day', 'jeden 2. Tag'],
  ['FREQ=WEEKLY;BYDAY=TU,TH', 'Tue, Thu', 'Di, Do'],
  ['FREQ=WEEKLY;INTERVAL=2;BYDAY=MO', 'Mon, every 2nd week', 'Mo, jede 2. Woche'],
  ['FREQ=WEEKLY;INTERVAL=2;WKST=SU', 'every 2nd week', 'jede 2. Woche'],
  ['FREQ=MONTHLY;BYDAY=1FR', '1st Fri of the month', '1. Fr im Monat'],
  ['FREQ=MONTHLY;BYDAY=-1SU', 'last Sun of the month', 'letzter So im Monat'],
  [
    'FREQ=MONTHLY;BYMONTHDAY=2,15',
    '2nd of the month, 15th of the month',
    'am 2. des Monats, am 15. des Monats',
  ],
  ['FREQ=WEEKLY;UNTIL=20261224T000000Z;BYDAY=SA', 'Sat until 2026-12-24', 'Sa bis 2026-12-24'],
])('%s is %s', (rrule, inEnglish, inGerman) => {
  expect(recurrenceText(rrule, english)).toBe(inEnglish);
  expect(recurrenceText(rrule, german)).toBe(inGerman);
});

test.each([
  'FREQ=MONTHLY;BYDAY=TU;BYSETPOS=3',
  'FREQ=MONTHLY;BYMONTHDAY=-3',
  'FREQ=YEARLY;BYMONTH=6',
  'FREQ=MONTHLY;BYDAY=-2MO',
])('what short words cannot say is given as it is written: %s', (rrule) => {
  expect(recurrenceText(rrule, english)).toBe(rrule.toLowerCase().replaceAll(';', ', '));
});

import { expect, test } from 'vitest';
import { zoneRules } from '../../src/schedule/zone-rules.ts';

// IANA time zone database, rules in force in 2026: US 1987-2006 and 2007 on; EU 1996 on; AN and LH 2008 on; NZ 2007 on.
test.each([
  ['America/New_York', 'FREQ=YEARLY;BYMONTH=3;BYDAY=2SU', 120, 'FREQ=YEARLY;BYMONTH=11;BYDAY=1SU', 120],
  ['Europe/London', 'FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU', 60, 'FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU', 120],
  ['Europe/Berlin', 'FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU', 120, 'FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU', 180],
  ['Australia/Sydney', 'FREQ=YEARLY;BYMONTH=10;BYDAY=1SU', 120, 'FREQ=YEARLY;BYMONTH=4;BYDAY=1SU', 180],
  ['Australia/Lord_Howe', 'FREQ=YEARLY;BYMONTH=10;BYDAY=1SU', 120, 'FREQ=YEARLY;BYMONTH=4;BYDAY=1SU', 120],
  ['Pacific/Auckland', 'FREQ=YEARLY;BYMONTH=9;BYDAY=-1SU', 120, 'FREQ=YEARLY;BYMONTH=4;BYDAY=1SU', 180],
])('%s keeps to one weekday of the month', (zone, forward, forwardMinute, back, backMinute) => {
  const rules = zoneRules(zone, '2026-12-01');
  const of = (kind: string) => rules.filter((rule) => rule.kind === kind);
  expect(rules).toHaveLength(2);
  expect(of('daylight')).toMatchObject([{ rrule: forward, start: { minute: forwardMinute } }]);
  expect(of('standard')).toMatchObject([{ rrule: back, start: { minute: backMinute } }]);
});

test.each([
  ['Asia/Kolkata', 330],
  ['America/Phoenix', -420],
  ['UTC', 0],
])('%s has one rule and no change', (zone, offsetMin) => {
  expect(zoneRules(zone, '2026-12-01')).toEqual([
    {
      kind: 'standard',
      start: { date: '1970-01-01', minute: 0 },
      oldOffsetMin: offsetMin,
      newOffsetMin: offsetMin,
    },
  ]);
});

// Morocco goes by the month of Ramadan, which no rule of the Gregorian calendar follows.
test('a zone whose changes follow another calendar has them date by date', () => {
  const rules = zoneRules('Africa/Casablanca', '2026-12-01');
  expect(rules.length).toBeGreaterThan(1);
  expect(rules.every(({ rrule }) => rrule === undefined)).toBe(true);
});

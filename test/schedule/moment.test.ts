import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import { clockChanges } from '../../src/schedule/clock-changes.ts';
import { momentOf } from '../../src/schedule/moment.ts';
import { zoneOffset } from '../../src/schedule/zone-offset.ts';
import { clockChanges20262027, unchangedZones } from '../sources/schedule/clock-changes-2026-2027.ts';

const minuteOf = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
const zones = [...new Set(clockChanges20262027.map(([zone]) => zone))];

test.each(zones)(
  '%s changes its clocks in 2026 and 2027 when the tz database says, and at no other time',
  (zone) => {
    const published = clockChanges20262027
      .filter(([each]) => each === zone)
      .map(([, instant]) => Date.parse(instant));
    expect(clockChanges(zone, '2026-01-01', '2027-12-31').map(({ instantMs }) => instantMs)).toEqual(
      published,
    );
  },
);

test.each(unchangedZones)('%s keeps one offset through 2026 and 2027', (zone, offsetMin) => {
  expect(clockChanges(zone, '2026-01-01', '2027-12-31')).toEqual([]);
  expect(zoneOffset(zone)(Date.parse('2026-01-01T00:00Z'))).toBe(offsetMin * 60_000);
});

test.each(clockChanges20262027)(
  'in %s the times left out or doubled at %s say so, and those to either side are plain',
  (zone, instant, date, oldClock, newClock, oldOffsetMin, newOffsetMin) => {
    const offsetAt = zoneOffset(zone);
    const at = Date.parse(instant);
    expect(offsetAt(at - 1)).toBe(oldOffsetMin * 60_000);
    expect(offsetAt(at)).toBe(newOffsetMin * 60_000);
    const forward = newOffsetMin > oldOffsetMin;
    const [first, after] = forward
      ? [minuteOf(oldClock), minuteOf(newClock)]
      : [minuteOf(newClock), minuteOf(oldClock)];
    const middle = (first + after) / 2;
    for (const minute of [first, middle, after - 1]) {
      const moment = momentOf(offsetAt, date, minute);
      expect(moment.kind).toBe(forward ? 'gap' : 'overlap');
      if (moment.kind === 'gap') expect(moment.shiftMin).toBe(newOffsetMin - oldOffsetMin);
      if (moment.kind === 'overlap')
        expect(moment.secondMs - moment.instantMs).toBe((oldOffsetMin - newOffsetMin) * 60_000);
    }
    expect(momentOf(offsetAt, date, first - 1)).toEqual({
      kind: 'once',
      instantMs: at - 60_000 - (forward ? 0 : (oldOffsetMin - newOffsetMin) * 60_000),
    });
    expect(momentOf(offsetAt, date, after)).toEqual({
      kind: 'once',
      instantMs: at + (forward ? 0 : (after - first) * 60_000),
    });
  },
);

// RFC 5545 (September 2009), 3.3.5, the two examples of form 3.
test('calendars take the first 01:30 of 4 November 2007 in New York, and 02:30 of 11 March 2007 as 03:30', () => {
  const offsetAt = zoneOffset('America/New_York');
  expect(momentOf(offsetAt, '2007-11-04', 90)).toMatchObject({
    kind: 'overlap',
    instantMs: Date.parse('2007-11-04T01:30-04:00'),
  });
  expect(momentOf(offsetAt, '2007-03-11', 150)).toMatchObject({
    kind: 'gap',
    instantMs: Date.parse('2007-03-11T03:30-04:00'),
  });
});

// Oracle: Temporal (TC39), whose disambiguation 'reject' refuses gaps and overlaps, 'earlier' and 'later' give both.
test('any time of day in any of the zones is what Temporal finds', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...zones, 'America/Phoenix', 'Asia/Kolkata', 'Africa/Casablanca', 'America/St_Johns'),
      fc.integer({ min: 0, max: 730 }),
      fc.integer({ min: 0, max: 1439 }),
      (zone, day, minute) => {
        const local = Temporal.PlainDate.from('2026-01-01').add({ days: day });
        const time = local.toPlainDateTime(Temporal.PlainTime.from('00:00')).add({ minutes: minute });
        const earlier = time.toZonedDateTime(zone, { disambiguation: 'earlier' }).epochMilliseconds;
        const later = time.toZonedDateTime(zone, { disambiguation: 'later' });
        const moment = momentOf(zoneOffset(zone), local.toString(), minute);
        if (earlier === later.epochMilliseconds) expect(moment).toEqual({ kind: 'once', instantMs: earlier });
        else if (later.toPlainDateTime().equals(time))
          expect(moment).toEqual({ kind: 'overlap', instantMs: earlier, secondMs: later.epochMilliseconds });
        else expect(moment).toMatchObject({ kind: 'gap', instantMs: later.epochMilliseconds });
      },
    ),
    { numRuns: 400, seed: 11 },
  );
});

test('a night in Lord Howe goes back by half an hour', () => {
  const moment = momentOf(zoneOffset('Australia/Lord_Howe'), '2026-04-05', 105);
  expect(moment).toMatchObject({ kind: 'overlap' });
  expect(momentOf(zoneOffset('Australia/Lord_Howe'), '2026-10-04', 135)).toMatchObject({
    kind: 'gap',
    shiftMin: 30,
  });
});

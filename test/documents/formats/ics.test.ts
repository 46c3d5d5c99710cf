import fc from 'fast-check';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { type IcsCalendar, ics } from '../../../src/documents/formats/ics.ts';

const calendar = (summary: string, description = ''): IcsCalendar => ({
  name: 'Example',
  zone: {
    id: 'Etc/UTC',
    rules: [{ kind: 'standard', start: { date: '1970-01-01', minute: 0 }, oldOffsetMin: 0, newOffsetMin: 0 }],
  },
  stamp: { date: '2026-12-01', minute: 0 },
  sequence: 3,
  events: [
    {
      uid: 'morning-example',
      start: { date: '2026-12-01', minute: 450 },
      utc: false,
      durationMin: 15,
      rrule: 'FREQ=DAILY',
      summary,
      description,
    },
  ],
});
const text = (given: IcsCalendar) => new TextDecoder().decode(ics(given));

// RFC 5545 (September 2009), 3.1.
test('every line ends in CRLF, the last too, and none is over 75 octets', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (summary) => {
      const written = text(calendar(summary));
      expect(written.endsWith('END:VCALENDAR\r\n')).toBe(true);
      expect(written.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      for (const line of written.split('\r\n'))
        expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    }),
    { seed: 1 },
  );
});

// Oracle: ical.js reads back what was written (RFC 5545, 3.1 and 3.3.11); control characters have no place in text.
test('any text comes back as it was written, however it is escaped and folded', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (summary) => {
      const plain = summary.replace(/[\0-\x08\x0b-\x1f\x7f]/g, '');
      const [event] = new ICAL.Component(ICAL.parse(text(calendar(plain)))).getAllSubcomponents('vevent');
      expect(event?.getFirstPropertyValue('summary')).toBe(plain);
    }),
    { seed: 2 },
  );
});

test('backslash, semicolon, comma and line end are escaped, the backslash first', () => {
  expect(text(calendar('a\\b;c,d\ne'))).toContain('SUMMARY:a\\\\b\\;c\\,d\\ne\r\n');
});

test('a long line goes on after a space that counts among the 75 octets', () => {
  const lines = text(calendar('x'.repeat(200))).split('\r\n');
  const first = lines.findIndex((line) => line.startsWith('SUMMARY:'));
  expect(lines.slice(first, first + 3).map((line) => line.length)).toEqual([75, 75, 60]);
  expect(lines[first + 1]?.startsWith(' x')).toBe(true);
});

test('an event has its own lasting name, the stamp of the plan and the revision as its sequence', () => {
  const written = text(calendar('Morning'));
  expect(written).toContain('UID:morning-example\r\nDTSTAMP:20261201T000000Z\r\nSEQUENCE:3\r\n');
  expect(written).toContain('DTSTART;TZID=Etc/UTC:20261201T073000\r\nDURATION:PT900S\r\n');
  expect(written).toBe(text(calendar('Morning')));
});

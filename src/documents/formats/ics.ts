/**
 * Events → an iCalendar file as RFC 5545 (September 2009) has it: lines end in CRLF, the last too, and are
 * folded at 75 octets (3.1); backslash, semicolon, comma and line ends are escaped in text (3.3.11); every
 * event has its UID and DTSTAMP (3.6.1); every time with a zone names it, and the zone stands in the file
 * (3.2.19, 3.6.5). The name of the whole calendar is a property of RFC 7986 (October 2016), 5.1.
 *
 * Nothing is taken from the clock: the stamp and the sequence are the plan's, so that the same plan gives the
 * same bytes and a later revision replaces the events of an earlier one.
 */

export interface IcsTime {
  /** ISO date. */
  readonly date: string;
  /** Minutes after midnight. */
  readonly minute: number;
}

export interface IcsEvent {
  /** The same for the same event in every revision. */
  readonly uid: string;
  readonly start: IcsTime;
  /** In UTC rather than in the zone of the file. */
  readonly utc: boolean;
  readonly durationMin: number;
  readonly rrule?: string;
  /** Further starts. */
  readonly dates?: readonly IcsTime[];
  readonly summary: string;
  readonly description: string;
}

export interface IcsZoneRule {
  readonly kind: 'standard' | 'daylight';
  readonly start: IcsTime;
  readonly oldOffsetMin: number;
  readonly newOffsetMin: number;
  readonly rrule?: string;
  readonly dates?: readonly IcsTime[];
}

export interface IcsCalendar {
  readonly name: string;
  readonly zone: { readonly id: string; readonly rules: readonly IcsZoneRule[] };
  /** When the events were so decided, UTC. */
  readonly stamp: IcsTime;
  readonly sequence: number;
  readonly events: readonly IcsEvent[];
}

export function ics(calendar: IcsCalendar): Uint8Array {
  const { zone, events } = calendar;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//readback//plan//EN',
    'CALSCALE:GREGORIAN',
    `NAME:${escaped(calendar.name)}`,
    ...(events.some(({ utc }) => !utc) ? zoneLines(zone.id, zone.rules) : []),
    ...events.flatMap((event) => eventLines(event, calendar)),
    'END:VCALENDAR',
  ];
  return new TextEncoder().encode(lines.map((line) => `${folded(line)}\r\n`).join(''));
}

function zoneLines(id: string, rules: readonly IcsZoneRule[]): readonly string[] {
  return [
    'BEGIN:VTIMEZONE',
    `TZID:${id}`,
    ...rules.flatMap(({ kind, start, oldOffsetMin, newOffsetMin, rrule, dates }) => [
      `BEGIN:${kind.toUpperCase()}`,
      `DTSTART:${dateTime(start)}`,
      ...(rrule === undefined ? [] : [`RRULE:${rrule}`]),
      ...(dates === undefined ? [] : [`RDATE:${dates.map(dateTime).join(',')}`]),
      `TZOFFSETFROM:${offset(oldOffsetMin)}`,
      `TZOFFSETTO:${offset(newOffsetMin)}`,
      `END:${kind.toUpperCase()}`,
    ]),
    'END:VTIMEZONE',
  ];
}

function eventLines(event: IcsEvent, { zone, stamp, sequence }: IcsCalendar): readonly string[] {
  const { uid, start, utc, durationMin, rrule, dates, summary, description } = event;
  const at = (name: string, times: readonly IcsTime[]) =>
    utc
      ? `${name}:${times.map((time) => `${dateTime(time)}Z`).join(',')}`
      : `${name};TZID=${zone.id}:${times.map(dateTime).join(',')}`;
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${dateTime(stamp)}Z`,
    `SEQUENCE:${sequence}`,
    at('DTSTART', [start]),
    `DURATION:PT${Math.round(durationMin * 60)}S`,
    ...(rrule === undefined ? [] : [`RRULE:${rrule}`]),
    ...(dates === undefined || dates.length === 0 ? [] : [at('RDATE', dates)]),
    `SUMMARY:${escaped(summary)}`,
    `DESCRIPTION:${escaped(description)}`,
    'END:VEVENT',
  ];
}

/** `20261201T073000` */
function dateTime({ date, minute }: IcsTime): string {
  return `${date.replaceAll('-', '')}T${two(Math.floor(minute / 60))}${two(minute % 60)}00`;
}

/** `-0500` */
function offset(minutes: number): string {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}${two(size % 60)}`;
}

function two(number: number): string {
  return String(number).padStart(2, '0');
}

/** Other control characters have no place in text (3.1) and are left out. */
function escaped(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\0-\x08\x0b-\x1f\x7f]/g, '')
    .replace(/[\\;,]/g, (character) => `\\${character}`)
    .replaceAll('\n', '\\n');
}

const mostOctets = 75;

/** Broken before the 76th octet, never within a character; each further line begins with a space that counts. */
function folded(line: string): string {
  if (line.length <= mostOctets && /^[\x20-\x7e]*$/.test(line)) return line;
  const encoder = new TextEncoder();
  let text = '';
  let used = 0;
  for (const character of line) {
    const octets = encoder.encode(character).length;
    if (used + octets > mostOctets) {
      text += '\r\n ';
      used = 1;
    }
    text += character;
    used += octets;
  }
  return text;
}

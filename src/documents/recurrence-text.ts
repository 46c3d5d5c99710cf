/**
 * A recurrence rule (RFC 5545, 3.3.10) in words, as far as short words can say it: days of the week, every so many
 * weeks or days, the first Monday or the fifteenth of the month. Anything beyond is given as the rule's own parts,
 * since a wrong paraphrase on a card is worse than an ugly true one.
 */
import type { Words } from './words.ts';

const dayNumber: Readonly<Record<string, number>> = { MO: 0, TU: 1, WE: 2, TH: 3, FR: 4, SA: 5, SU: 6 };

export function recurrenceText(rrule: string, words: Words): string {
  const parts = new Map(rrule.split(';').map((part) => part.split('=') as [string, string]));
  const raw = rrule.toLowerCase().replaceAll(';', ', ').replaceAll('_', ' ');
  const known = new Set(['FREQ', 'INTERVAL', 'BYDAY', 'BYMONTHDAY', 'WKST', 'UNTIL', 'COUNT']);
  if ([...parts.keys()].some((name) => !known.has(name))) return raw;
  const every = Number(parts.get('INTERVAL') ?? 1);
  const days = parts.get('BYDAY')?.split(',') ?? [];
  const monthDays = parts.get('BYMONTHDAY')?.split(',').map(Number) ?? [];
  const until = parts.get('UNTIL');
  // A count of times cannot be followed on a card, and is left to the calendar; an end can.
  const end =
    until === undefined
      ? ''
      : ` ${words.until(`${until.slice(0, 4)}-${until.slice(4, 6)}-${until.slice(6, 8)}`)}`;
  const plain = days.map((day) => words.dayShort[dayNumber[day] ?? -1]);
  switch (parts.get('FREQ')) {
    case 'DAILY':
      return days.length + monthDays.length > 0 ? raw : `${words.everyDays(every)}${end}`;
    case 'WEEKLY': {
      if (
        monthDays.length > 0 ||
        plain.some((day) => day === undefined) ||
        (days.length === 0 && every === 1)
      )
        return raw;
      const on = plain.join(', ');
      return `${every === 1 ? on : `${on === '' ? '' : `${on}, `}${words.everyWeeks(every)}`}${end}`;
    }
    case 'MONTHLY': {
      if (every !== 1 || days.length > 0 === monthDays.length > 0) return raw;
      if (monthDays.length > 0) {
        return monthDays.every((day) => day > 0)
          ? `${monthDays.map((day) => words.dayOfMonth(day)).join(', ')}${end}`
          : raw;
      }
      const named = days.map((day) => {
        const [, ordinal = '', name = ''] = /^([+-]?\d)([A-Z]{2})$/.exec(day) ?? [];
        const shown = words.dayShort[dayNumber[name] ?? -1];
        const which = Number(ordinal);
        return shown === undefined || which === 0 || which < -1
          ? undefined
          : words.weekdayOfMonth(which, shown);
      });
      return named.some((day) => day === undefined) ? raw : `${named.join(', ')}${end}`;
    }
    default:
      return raw;
  }
}

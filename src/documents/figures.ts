/** Figures and times as documents show them: rounded once, spelled once, in whole words of {@link Words}. */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { Days, TimeOfDay } from '../plan/model.ts';
import { formatFrequency, formatOffset } from '../radio/format-quantity.ts';
import { formatTone } from '../radio/tone.ts';
import { recurrenceText } from './recurrence-text.ts';
import type { Words } from './words.ts';

export function clock(time: TimeOfDay, words: Words): string {
  const text = hoursAndMinutes(time.minute);
  return time.utc ? `${text} ${words.utc}` : text;
}

function hoursAndMinutes(minute: number): string {
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
}

/** Starts of a watch through one day, `07 10 13 h` when all are full hours, else `07:30 10:30`. */
export function starts(
  at: TimeOfDay,
  until: TimeOfDay | undefined,
  repeatsMin: number | undefined,
  words: Words,
): string {
  if (repeatsMin === undefined) return clock(at, words);
  const last = until?.minute ?? 24 * 60 - 1;
  // A watch may run past midnight: its last start is then earlier on the clock than its first.
  const end = last >= at.minute ? last : last + 24 * 60;
  const minutes: number[] = [];
  for (let minute = at.minute; minute <= end; minute += repeatsMin) minutes.push(minute % (24 * 60));
  const times = minutes.every((minute) => minute % 60 === 0)
    ? `${minutes.map((minute) => String(minute / 60).padStart(2, '0')).join(' ')} ${words.hours}`
    : minutes.map(hoursAndMinutes).join(' ');
  return at.utc ? `${times} ${words.utc}` : times;
}

export function daysText(days: Days, words: Words): string {
  if (days.kind === 'recurrence') return recurrenceText(days.rrule, words);
  const key = days.isoDays.join('');
  if (key === '1234567') return words.everyDay;
  if (key === '12345') return words.weekdays;
  if (key === '67') return words.weekends;
  return days.isoDays.map((day) => words.dayShort[day - 1] ?? '').join(', ');
}

/** `5 min`, `1 h`, `1 h 30 min` */
export function span(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round((minutes - hours * 60) * 10) / 10;
  return [hours > 0 ? `${hours} h` : '', rest > 0 || hours === 0 ? `${rest} min` : '']
    .filter(Boolean)
    .join(' ');
}

/** The shift on a card: `-0.6`, `+5`, or nothing for simplex. A real minus sign, which is as wide as the plus. */
export function shift(on: ChannelParticulars): string {
  if (on.direction === 'none') return '';
  return `${on.direction === 'minus' ? '\u2212' : '+'}${offsetSize(on)}`;
}

/** Size of the offset in MHz without sign or unit, as a menu asks for it: `0.6`. */
export function offsetSize(on: Pick<ChannelParticulars, 'offsetHz'>): string {
  return formatOffset(on.offsetHz).replace(/^\+| MHz$/g, '');
}

export function toneText(on: ChannelParticulars): string {
  return on.tone === undefined ? '' : formatTone(on.tone);
}

/** A frequency as it is read and said: groups of three figures after the point, `446.006 25`. */
export function megahertz(frequencyHz: number): string {
  return formatFrequency(frequencyHz).replace(/(\.\d{3})(\d+)$/, '$1 $2');
}

/** `14 Nov`, as words name the month. */
export function shortDate(isoDate: string, words: Words): string {
  const [, month, day] = isoDate.split('-').map(Number);
  return words.dayAndMonth(day ?? 0, words.monthShort[(month ?? 1) - 1] ?? '');
}

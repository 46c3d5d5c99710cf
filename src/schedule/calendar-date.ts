/** Dates without a time or a zone, as ISO 8601 text `2026-12-01`. Arithmetic is on days of the calendar alone. */

export const dayMs = 86_400_000;
export const minuteMs = 60_000;

export function addDays(date: string, days: number): string {
  return dateOf(Date.parse(date) + days * dayMs);
}

/** Days from one date to another; negative if the other is earlier. */
export function daysFrom(first: string, second: string): number {
  return Math.round((Date.parse(second) - Date.parse(first)) / dayMs);
}

/** 1 Monday to 7 Sunday, as ISO 8601 counts. */
export function isoWeekday(date: string): number {
  return new Date(date).getUTCDay() || 7;
}

/** Monday of the week that holds a date. */
export function mondayOf(date: string): string {
  return addDays(date, 1 - isoWeekday(date));
}

/** The date of an instant in UTC; give it an instant moved by a zone's offset for the date there. */
export function dateOf(instantMs: number): string {
  return new Date(instantMs).toISOString().slice(0, 10);
}

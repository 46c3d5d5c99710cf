/**
 * Whose turn it is. Turns begin with the first in the list on the date the plan takes effect, so that anybody
 * with the plan and a calendar finds the same name.
 *
 * By `week`: weeks run from Monday to Sunday, and the week that holds the date of effect is the first, whether
 * or not the check-in was held in it. By `day`: days on which it is held are counted. By `time`: every time is.
 */
import { daysFrom, mondayOf } from './calendar-date.ts';

export interface TurnCount {
  /** ISO date of the occurrence. */
  readonly date: string;
  /** How many days since the date of effect it was held on before this one. */
  readonly daysBefore: number;
  /** How many times it was held before this one. */
  readonly timesBefore: number;
}

/** Undefined where nobody is in the list. */
export function turnOf<Person>(
  list: readonly Person[],
  by: 'day' | 'week' | 'time',
  effective: string,
  count: TurnCount,
): Person | undefined {
  const turns =
    by === 'week'
      ? daysFrom(mondayOf(effective), mondayOf(count.date)) / 7
      : by === 'day'
        ? count.daysBefore
        : count.timesBefore;
  return list[turns % list.length];
}

/** When a watch that repeats through the day begins. */

const dayMinutes = 1440;

/**
 * Minutes after midnight of the day it belongs to, 1440 and more for starts after the next midnight: a watch
 * whose last start is earlier on the clock than its first runs past midnight. Without a last start it repeats
 * until the day ends.
 */
export function dayStarts(
  firstMinute: number,
  lastMinute: number | undefined,
  repeatsMin: number | undefined,
): readonly number[] {
  if (repeatsMin === undefined || repeatsMin <= 0) return [firstMinute];
  const last = lastMinute ?? dayMinutes - 1;
  const end = last >= firstMinute ? last : last + dayMinutes;
  const starts: number[] = [];
  for (let minute = firstMinute; minute <= end; minute += repeatsMin) starts.push(minute);
  return starts;
}

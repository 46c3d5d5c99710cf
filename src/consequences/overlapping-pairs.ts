/** Check-ins that run at the same time in some week, each pair once: the one that begins first, then the other. */
import type { CheckIn } from '../plan/model.ts';
import { startMinutes, weekdaysOf } from './starts.ts';

const dayMinutes = 1440;
const weekMinutes = 7 * dayMinutes;

/** A day is taken as it is written, so one in UTC is not held against one in local time: the season decides. */
export function overlappingPairs(
  checkIns: Iterable<CheckIn>,
): readonly { readonly first: CheckIn; readonly second: CheckIn }[] {
  const runs = [...checkIns].flatMap((checkIn) =>
    (weekdaysOf(checkIn.days) ?? []).flatMap((day) =>
      startMinutes(checkIn).flatMap((minute) => {
        const from = ((day - 1) * dayMinutes + minute) % weekMinutes;
        const run = { checkIn, from, to: from + checkIn.lastsMin };
        // What runs over the end of the week meets the beginning of the next.
        return run.to > weekMinutes
          ? [run, { checkIn, from: from - weekMinutes, to: run.to - weekMinutes }]
          : [run];
      }),
    ),
  );
  const pairs = new Map<string, { first: CheckIn; second: CheckIn }>();
  let open: typeof runs = [];
  for (const run of runs.sort((a, b) => a.from - b.from)) {
    open = open.filter(({ to }) => to > run.from);
    for (const { checkIn: first } of open) {
      const second = run.checkIn;
      const reversed = `${second.id} ${first.id}`;
      if (first.at.utc === second.at.utc && first.id !== second.id && !pairs.has(reversed))
        pairs.set(`${first.id} ${second.id}`, { first, second });
    }
    open.push(run);
  }
  return [...pairs.values()];
}

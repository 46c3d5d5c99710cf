import { formatDuration } from '../../radio/format-quantity.ts';
import { commonPractice, rule } from '../rule.ts';

/** A watch that repeats and has no end is kept once, or all night. */
export const checkInWatchWithoutEnd = rule({
  id: 'check-in/watch-without-end',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A check-in that repeats through the day without a last start.',
  why: 'Nobody can tell whether the batteries must last till noon or till morning, and calendars show only the first.',
  mend: 'Add `until` with the time of its last start.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "07:00", repeats: 3 h, lasts: 5 min } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "07:00", until: "19:00", repeats: 3 h, lasts: 5 min }`,
  *check({ plan }) {
    for (const { id, name, until, repeatsMin } of plan.checkIns.values()) {
      if (repeatsMin !== undefined && until === undefined)
        yield {
          at: ['check-ins', id, 'repeats'],
          message: `${name} repeats every ${formatDuration(repeatsMin * 60)}, but has no \`until\` for its last start.`,
        };
    }
  },
});

/** What was really heard on a rung of somebody's ladder, for the card: a rung that nobody has tried is only a hope. */
import type { Member, Plan, Rung } from '../plan/model.ts';
import { shortDate } from './figures.ts';
import type { Words } from './words.ts';

/**
 * The last trial from each place where the member may be, or from the place the rung sends them to; empty for a
 * rung without a radio. The day is that of the latest.
 */
export function triedText(plan: Plan, member: Member, rung: Rung, words: Words): string {
  if (rung.channel === undefined) return '';
  const stands = rung.from === undefined ? [member.at ?? '', ...member.roams] : [rung.from];
  const last = new Map<string, Plan['trials'][number]>();
  for (const trial of plan.trials.toSorted((a, b) => (a.date < b.date ? -1 : 1))) {
    const from = plan.members.get(trial.from)?.at ?? trial.from;
    if (trial.channel === rung.channel && stands.includes(from)) last.set(from, trial);
  }
  const latest = [...last.values()].reduce((most, { date }) => (date > most ? date : most), '');
  if (latest === '') return words.untried;
  return words.tried(
    shortDate(latest, words),
    [...last].map(([place, { heard }]) => ({
      place: plan.places.get(place)?.name ?? place,
      heard: words.heard[heard],
    })),
  );
}

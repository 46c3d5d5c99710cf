/**
 * How long each member can be silent before anybody notices: the longest stretch from one check-in that calls
 * them to the next, reckoned over a year so that both clock changes and every turn of a rule are in it; and
 * how long the ladder then takes that is started for them.
 *
 * A listening watch calls nobody and counts for nothing here. A check-in that the clocks leave out is taken as
 * not held, since no clock shows it; one that comes twice as held once, at the first.
 */
import type { Ladder, Plan } from '../plan/model.ts';
import { addDays, minuteMs } from '../schedule/calendar-date.ts';
import type { Occurrence } from './occurrences.ts';
import { membersOf } from './who.ts';

export interface Silence {
  readonly member: string;
  /** Check-ins that call them. */
  readonly calledBy: readonly string[];
  /** The longest stretch; absent where nothing calls them, or only once in the year. */
  readonly longest?: SilentStretch;
  /** Set where they are called for the last time within the year: the date of that call, after which nobody notices. */
  readonly lastCalled?: string;
}

export interface SilentStretch {
  /** Instants of the two check-ins, milliseconds since 1970-01-01T00:00Z. */
  readonly fromMs: number;
  readonly toMs: number;
  /** ISO date of the later one on the clocks of the plan's zone. */
  readonly date: string;
  /** From the start of the one to the start of the other. */
  readonly gapMin: number;
  /** How long the later check-in lasts: by its end it is known who did not answer. */
  readonly rollMin: number;
  /** The later check-in. */
  readonly checkIn: string;
  /** The ladder it starts for who is missing, and the time of all its rungs together. */
  readonly ladder?: string;
  readonly ladderMin: number;
  /** Rungs of that ladder to which the plan gives no time. */
  readonly untimedRungs: number;
  /** Gap, roll and ladder: the longest from a member's last word to every rung having been tried. */
  readonly totalMin: number;
}

/** The year from a date on, for which occurrences are to be given. */
export function silenceYear(from: string): { readonly from: string; readonly to: string } {
  return { from, to: addDays(from, 371) };
}

/**
 * @param year occurrences of the plan over {@link silenceYear}, in order of time
 * @param to the ISO date on which that year ends
 */
export function silences(plan: Plan, year: readonly Occurrence[], to: string): readonly Silence[] {
  const calling = [...plan.checkIns.values()].filter(({ listen }) => !listen);
  const called = new Map(calling.map(({ id, who }) => [id, new Set(membersOf(plan, who))]));
  const held = year.filter(({ checkIn, moment }) => !checkIn.listen && moment.kind !== 'gap');
  // Members called by the same check-ins are silent alike: a plan has many members and few such sets.
  const known = new Map<string, Omit<Silence, 'member'>>();
  return [...plan.members.keys()].map((member) => {
    const onRoll = (id: string) => called.get(id)?.has(member) === true;
    const calledBy = calling.filter(({ id }) => onRoll(id)).map(({ id }) => id);
    // Net control who is not on the roll is missed as well, but only when it is their turn.
    const controls = calling
      .filter(({ id, control }) => !onRoll(id) && control.includes(member))
      .map(({ id }) => id);
    const key = [...calledBy, ...(controls.length > 0 ? ['/', member] : [])].join(' ');
    const found = known.get(key) ?? {
      calledBy: [...calledBy, ...controls],
      ...silenceOf(
        plan,
        held.filter(({ checkIn, control }) => onRoll(checkIn.id) || control === member),
        Date.parse(to),
      ),
    };
    known.set(key, found);
    return { member, ...found };
  });
}

function silenceOf(
  plan: Plan,
  times: readonly Occurrence[],
  endMs: number,
): Omit<Silence, 'member' | 'calledBy'> {
  const stretches = times.flatMap((later, index) => {
    const earlier = times[index - 1];
    return earlier ? [stretch(plan, earlier, later)] : [];
  });
  const longest = stretches.reduce<SilentStretch | undefined>(
    (most, each) => (most === undefined || each.totalMin > most.totalMin ? each : most),
    undefined,
  );
  const last = times.at(-1);
  const openMin = last ? (endMs - last.moment.instantMs) / minuteMs : 0;
  return {
    ...(longest && { longest }),
    ...(last && openMin > (longest?.gapMin ?? 0) && { lastCalled: last.local.date }),
  };
}

function stretch(plan: Plan, earlier: Occurrence, later: Occurrence): SilentStretch {
  const [fromMs, toMs] = [earlier.moment.instantMs, later.moment.instantMs];
  const gapMin = (toMs - fromMs) / minuteMs;
  const rollMin = later.checkIn.lastsMin;
  const ladder = later.checkIn.missed === undefined ? undefined : plan.ladders.get(later.checkIn.missed);
  const ladderMin = ladder ? rungsMin(ladder) : 0;
  return {
    fromMs,
    toMs,
    date: later.local.date,
    gapMin,
    rollMin,
    checkIn: later.checkIn.id,
    ...(ladder && { ladder: ladder.id }),
    ladderMin,
    untimedRungs: ladder?.rungs.filter(({ withinMin }) => withinMin === undefined).length ?? 0,
    totalMin: gapMin + rollMin + ladderMin,
  };
}

function rungsMin(ladder: Ladder): number {
  return ladder.rungs.reduce((sum, { withinMin }) => sum + (withinMin ?? 0), 0);
}

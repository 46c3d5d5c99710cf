/**
 * Calendars: one of the group with every check-in and watch, and one for each member with theirs and their own
 * turns as net control. A member's calendar names nobody else.
 *
 * A check-in keeps its time on the clocks of the plan's zone, so its rule is in that zone and not in UTC. Each
 * start of a watch that repeats through the day is an event of its own. Single dates, where a rule cannot say
 * it, reach a year from the date of effect.
 */
import type { Consequences } from '../consequences/consequences.ts';
import { type Occurrence, seriesOf } from '../consequences/occurrences.ts';
import { silenceYear } from '../consequences/silences.ts';
import { isZone } from '../consequences/zone-names.ts';
import type { CheckIn, Plan } from '../plan/model.ts';
import { minuteMs } from '../schedule/calendar-date.ts';
import { momentOf } from '../schedule/moment.ts';
import { zoneOffset } from '../schedule/zone-offset.ts';
import { zoneRules } from '../schedule/zone-rules.ts';
import type { IcsCalendar, IcsEvent } from './formats/ics.ts';
import type { Words } from './words.ts';

export interface Calendars {
  readonly group: IcsCalendar;
  /** By member. */
  readonly members: ReadonlyMap<string, IcsCalendar>;
}

/** Undefined where the plan's time zone is in no database. */
export async function gatherCalendars(
  plan: Plan,
  consequences: Consequences,
  check: string,
  { calendar: words }: Words,
): Promise<Calendars | undefined> {
  if (!isZone(plan.timezone)) return undefined;
  const { from, to } = silenceYear(plan.effective);
  const year = await consequences.occurrences(from, to);
  const head = {
    zone: { id: plan.timezone, rules: zoneRules(plan.timezone, plan.effective) },
    stamp: { date: plan.effective, minute: 0 },
    sequence: plan.revision,
  };
  const ofCheckIn = new Map<string, Occurrence[]>();
  for (const each of year) {
    const known = ofCheckIn.get(each.checkIn.id);
    if (known) known.push(each);
    else ofCheckIn.set(each.checkIn.id, [each]);
  }
  const events = (checkIns: Iterable<CheckIn>, member?: string) =>
    [...checkIns].flatMap((checkIn) =>
      eventsOf(
        {
          plan,
          words,
          check,
          year: ofCheckIn.get(checkIn.id) ?? [],
          called: consequences.membersOf(checkIn.who),
        },
        checkIn,
        member,
      ),
    );
  return {
    group: { ...head, name: plan.title, events: events(plan.checkIns.values()) },
    members: new Map(
      [...plan.members.values()].map(({ id, name }) => [
        id,
        {
          ...head,
          name: `${plan.title}: ${name}`,
          events: events(consequences.checkInsOf(id), id),
        },
      ]),
    ),
  };
}

interface Wanted {
  readonly plan: Plan;
  readonly words: Words['calendar'];
  readonly check: string;
  /** What is held of the check-in in the year. */
  readonly year: readonly Occurrence[];
  /** Members on its roll. */
  readonly called: readonly string[];
}

function eventsOf(wanted: Wanted, checkIn: CheckIn, member: string | undefined): readonly IcsEvent[] {
  const { plan, words, check, year, called } = wanted;
  const channel = plan.channels.get(checkIn.channel);
  const names = checkIn.control.map((id) => plan.members.get(id)?.name ?? id);
  const ladder = checkIn.missed === undefined ? undefined : plan.ladders.get(checkIn.missed);
  const own = member !== undefined && checkIn.control.includes(member);
  const say = (held: readonly Occurrence[]) =>
    [
      words.channel(checkIn.channel, channel?.name ?? ''),
      checkIn.listen ? words.listen : '',
      member === undefined && names.length > 0 ? words.control(names, checkIn.turn) : '',
      ladder && (member === undefined || own) ? words.missed(ladder.name) : '',
      ...held.flatMap(({ date, moment }) =>
        moment.kind === 'gap' ? words.leftOut(date) : moment.kind === 'overlap' ? words.comesTwice(date) : [],
      ),
      words.revision(plan.revision, check),
    ]
      .filter(Boolean)
      .join('\n');
  const event = (
    uid: string,
    held: readonly Occurrence[],
    summary: string,
    rule: Recurring,
  ): readonly IcsEvent[] => {
    const [first, ...later] = held;
    if (!first) return [];
    return [
      {
        uid: `${uid}-${slug(plan.title)}${member === undefined ? '' : `-${member}`}`,
        start: { date: first.date, minute: first.minute },
        utc: checkIn.at.utc,
        durationMin: checkIn.lastsMin,
        // The first start stands among the dates as well: some readers of calendars forget it otherwise.
        ...(rule.rrule === undefined
          ? { dates: later.length === 0 ? [] : held.map(({ date, minute }) => ({ date, minute })) }
          : { rrule: rule.rrule }),
        summary,
        description: say(held),
      },
    ];
  };
  // Net control who is not on the roll comes on their own turn alone.
  const comes = member === undefined || called.includes(member) || checkIn.control.length === 1;
  const starts = seriesOf(checkIn).minutes.flatMap((dayMinute) => {
    const minute = dayMinute % 1440;
    const held = year.filter((each) => each.minute === minute);
    const name = `${checkIn.id}-${String(Math.floor(minute / 60)).padStart(2, '0')}${String(minute % 60).padStart(2, '0')}`;
    return event(name, held, checkIn.name, ruleOf(plan, checkIn, Math.floor(dayMinute / 1440)));
  });
  // Whoever is net control each time needs no second entry at the same time.
  const turns =
    own && checkIn.control.length > 1
      ? event(
          `${checkIn.id}-control`,
          year.filter(({ control }) => control === member),
          words.yourTurn(checkIn.name),
          turnRule(checkIn),
        )
      : [];
  return comes ? [...starts, ...turns] : turns;
}

interface Recurring {
  /** Absent where only single dates can say it. */
  readonly rrule?: string;
}

const weekdays = ['MO', 'TU', 'WE', 'TH', 'FR', 'SA', 'SU'];

/** @param later days after the one it belongs to that it begins, for a watch past midnight */
function ruleOf(plan: Plan, checkIn: CheckIn, later: number): Recurring {
  const { days } = checkIn;
  if (days.kind === 'weekdays') {
    if (days.isoDays.length === 7) return { rrule: 'FREQ=DAILY' };
    const shifted = days.isoDays.map((day) => ((day - 1 + later) % 7) + 1).toSorted((a, b) => a - b);
    return { rrule: `FREQ=WEEKLY;BYDAY=${shifted.map((day) => weekdays[day - 1]).join(',')}` };
  }
  return later > 0 ? {} : { rrule: withUntil(plan, checkIn, days.rrule) };
}

/** An end on a date or on the clocks is given in UTC, as a start with a zone or in UTC asks (RFC 5545, 3.3.10). */
function withUntil({ timezone }: Plan, { at }: CheckIn, rrule: string): string {
  return rrule.replace(/UNTIL=(\d{4})(\d\d)(\d\d)(?:T(\d\d)(\d\d)(\d\d))?(?=;|$)/, (...match: string[]) => {
    const [, year, month, day, hour = '23', minute = '59', second = '59'] = match;
    const date = `${year}-${month}-${day}`;
    const whole = Number(hour) * 60 + Number(minute);
    const instantMs = at.utc
      ? Date.parse(date) + whole * minuteMs
      : momentOf(zoneOffset(timezone), date, whole).instantMs;
    const utc = new Date(instantMs + Number(second) * 1000).toISOString();
    return `UNTIL=${utc.slice(0, 19).replace(/[-:]/g, '')}Z`;
  });
}

/** A turn of a week on days of the week comes round every so many weeks; others are single dates. */
function turnRule({ control, turn, days, repeatsMin }: CheckIn): Recurring {
  const once = new Set(control).size === control.length;
  if (turn !== 'week' || days.kind !== 'weekdays' || !once || repeatsMin !== undefined) return {};
  return {
    rrule: `FREQ=WEEKLY;INTERVAL=${control.length};WKST=MO;BYDAY=${days.isoDays.map((day) => weekdays[day - 1]).join(',')}`,
  };
}

function slug(title: string): string {
  return (
    title
      .normalize('NFD')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '') || 'plan'
  );
}

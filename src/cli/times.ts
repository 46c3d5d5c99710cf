/** `readback times`: the coming check-ins, whose turn it is, and how long each member can be silent unnoticed. */
import type { Occurrence } from '../consequences/occurrences.ts';
import type { Silence } from '../consequences/silences.ts';
import { isZone } from '../consequences/zone-names.ts';
import { nearest } from '../findings/nearest.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import { addDays } from '../schedule/calendar-date.ts';
import type { ExitStatus } from './end-with.ts';
import { isIsoDate } from './iso-date.ts';
import { type LoadedSubject, loadSubject } from './load-subject.ts';
import { timesText } from './times-text.ts';

export interface TimesOptions {
  readonly days: string;
  readonly from?: string;
  readonly member?: string;
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export interface Times {
  readonly from: string;
  readonly to: string;
  /** Those of the member asked for, or all. */
  readonly occurrences: readonly Occurrence[];
  readonly silences: readonly Silence[];
  readonly member?: string;
}

export async function times(path: string, options: TimesOptions): Promise<ExitStatus> {
  const whole = await loadSubject(path, options);
  const found = await timesOf(whole, options);
  process.stdout.write(
    options.json
      ? `${JSON.stringify(timesJson(path, whole, found), null, 2)}\n`
      : await timesText(whole, found, options),
  );
  return 0;
}

async function timesOf({ plan, consequences, today }: LoadedSubject, options: TimesOptions): Promise<Times> {
  const days = /^\d{1,3}$/.test(options.days) ? Number(options.days) : 0;
  if (days < 1 || days > 366)
    throw new Refusal(`--days ${options.days} is no number of days from 1 to 366.`, 'Write --days 14.');
  if (options.from !== undefined && !isIsoDate(options.from))
    throw new Refusal(
      `--from ${options.from} is not a date.`,
      'Write it year-month-day, such as 2026-12-01.',
    );
  const { member } = options;
  if (member !== undefined && !plan.members.has(member)) {
    const near = nearest(member, [...plan.members.keys()]);
    throw new Refusal(
      `The plan has no member ${member}.`,
      near === undefined ? `Members are ${[...plan.members.keys()].join(', ')}.` : `Did you mean ${near}?`,
    );
  }
  if (!isZone(plan.timezone))
    throw new Refusal(
      `${plan.timezone} is no time zone, so no time in the plan can be turned into UTC.`,
      'Write plan.timezone as the IANA time zone database has it, such as America/New_York.',
    );
  const wanted = options.from ?? today;
  const [, from = wanted] = [wanted, plan.effective].toSorted();
  const to = addDays(from, days - 1);
  const mine = (occurrence: Occurrence) =>
    member === undefined ||
    occurrence.control === member ||
    consequences.membersOf(occurrence.checkIn.who).includes(member);
  return {
    from,
    to,
    occurrences: (await consequences.occurrences(from, to)).filter(mine),
    silences: (await consequences.silences(from)).filter(
      (silence) => member === undefined || silence.member === member,
    ),
    ...(member !== undefined && { member }),
  };
}

function timesJson(
  path: string,
  { plan, check }: LoadedSubject,
  { from, to, occurrences, silences }: Times,
): object {
  return {
    plan: path,
    revision: plan.revision,
    check,
    timezone: plan.timezone,
    from,
    to,
    occurrences: occurrences.map((occurrence) => occurrenceJson(plan, occurrence)),
    silences: silences.map(silenceJson),
  };
}

function occurrenceJson(plan: Plan, { checkIn, moment, local, control, reader }: Occurrence): object {
  return {
    checkIn: checkIn.id,
    name: checkIn.name,
    slot: checkIn.channel,
    channel: plan.channels.get(checkIn.channel)?.name ?? null,
    listen: checkIn.listen,
    local: { date: local.date, time: clockText(local.minute), offsetMin: local.offsetMin },
    utc: isoMinute(moment.instantMs),
    /** `once`; `gap`: the clocks leave it out; `overlap`: it comes twice, at `utc` and at `secondUtc`. */
    onClocks: moment.kind,
    secondUtc: moment.kind === 'overlap' ? isoMinute(moment.secondMs) : null,
    lastsMin: checkIn.lastsMin,
    control: control ?? null,
    readsPlanCheck: reader ?? null,
  };
}

function silenceJson({ member, calledBy, longest, lastCalled }: Silence): object {
  return {
    member,
    calledBy,
    longest: longest
      ? {
          from: isoMinute(longest.fromMs),
          to: isoMinute(longest.toMs),
          date: longest.date,
          gapMin: longest.gapMin,
          rollMin: longest.rollMin,
          checkIn: longest.checkIn,
          ladder: longest.ladder ?? null,
          ladderMin: longest.ladderMin,
          untimedRungs: longest.untimedRungs,
          totalMin: longest.totalMin,
        }
      : null,
    lastCalled: lastCalled ?? null,
  };
}

/** `07:30` */
export function clockText(minute: number): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

function isoMinute(instantMs: number): string {
  return `${new Date(instantMs).toISOString().slice(0, 16)}Z`;
}

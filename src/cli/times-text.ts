/** Coming check-ins and longest silences as text for people, eighty columns wide. */
import type { Occurrence } from '../consequences/occurrences.ts';
import type { Silence } from '../consequences/silences.ts';
import { span } from '../documents/figures.ts';
import { english } from '../documents/words.ts';
import type { Plan } from '../plan/model.ts';
import { plainSpellingWords } from '../radio/spelling.ts';
import { isoWeekday } from '../schedule/calendar-date.ts';
import { clockChanges } from '../schedule/clock-changes.ts';
import type { LoadedSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { type Lines, lines } from './print-lines.ts';
import { columnsOf, displayWidth, type TerminalOptions } from './terminal.ts';
import { clockText, type Times } from './times.ts';

export async function timesText(
  whole: LoadedSubject,
  times: Times,
  options: TerminalOptions,
): Promise<string> {
  const { plan, check } = whole;
  const painted = palette(process.stdout, options);
  const names = [
    plan.title,
    ...[...plan.members.values(), ...plan.checkIns.values(), ...plan.channels.values()].map(
      ({ name }) => name,
    ),
  ];
  const print = lines(columnsOf(process.stdout), await displayWidth(names));
  const blocks = [
    `${painted.strong(print.say(`${plan.title}, revision ${plan.revision}, plan check ${check}`))}\n${print.say(
      `${times.from} to ${times.to}, on the clocks of ${plan.timezone} and in UTC (Z).${
        times.from === plan.effective ? ' Nothing is held before the plan takes effect.' : ''
      }`,
    )}`,
    print.say(nextRollCall(plan, check, times.occurrences)),
    ...days(plan, times.occurrences, print, painted.strong),
    silencesText(plan, times.silences, print, painted.strong),
    painted.faint(
      print.say(
        'Turns are counted from the date of effect; a week runs from Monday to Sunday. Silence is the longest time from one check-in that calls a member to the next, over a year with its clock changes; the roll is how long that check-in lasts, the ladder the time of all rungs it starts for who is missing. Listening watches call nobody.',
      ),
    ),
  ];
  return `${blocks.join('\n\n')}\n`;
}

/** The first roll call of the list: who is net control, and who reads the plan check out. */
function nextRollCall(plan: Plan, check: string, occurrences: readonly Occurrence[]): string {
  const next = occurrences.find(({ checkIn }) => !checkIn.listen);
  if (!next) return 'No roll is called in this time.';
  const { checkIn, local, utc, control, reader } = next;
  const asked =
    reader === undefined
      ? ''
      : ` ${nameOf(plan, reader)} reads the plan check out from their card: ${check}, ${plainSpellingWords(check).join(' ')}.`;
  return `Next roll call: ${weekday(local.date)} ${local.date} ${clockText(local.minute)} (${clockText(utc.minute)}Z), ${checkIn.name} on ${channelOf(plan, checkIn.channel)}, net control ${control === undefined ? 'not named' : nameOf(plan, control)}.${asked}`;
}

function days(
  plan: Plan,
  occurrences: readonly Occurrence[],
  print: Lines,
  strong: (text: string) => string,
): readonly string[] {
  const byDate = new Map<string, Occurrence[]>();
  for (const each of occurrences) {
    const known = byDate.get(each.local.date);
    if (known) known.push(each);
    else byDate.set(each.local.date, [each]);
  }
  const longest = Math.min(
    14,
    Math.max(4, ...occurrences.map(({ checkIn }) => channelOf(plan, checkIn.channel).length)),
  );
  return [...byDate].map(([date, held]) => {
    const offsets = [...new Set(held.map(({ local }) => offsetText(local.offsetMin)))].join(', ');
    const [change] = clockChanges(plan.timezone, date, date);
    const changed =
      change === undefined
        ? ''
        : `; the clocks go ${change.kind === 'gap' ? 'forward' : 'back'} today, and times from ${clockText(change.fromMinute)} to ${clockText(change.toMinute % 1440)} ${change.kind === 'gap' ? 'do not exist' : 'come twice'}`;
    const head = `${weekday(date)} ${date}`;
    return [
      print.say(`${head}, ${offsets}${changed}`, 0, 2).replace(head, () => strong(head)),
      ...held.map((each) =>
        print.row(
          [
            '',
            clockText(each.local.minute),
            `${utcText(each)}`,
            channelOf(plan, each.checkIn.channel),
            what(plan, each),
          ],
          [2, 7, 9, longest + 2],
        ),
      ),
    ].join('\n');
  });
}

function what(plan: Plan, { checkIn, moment, control, reader, minute }: Occurrence): string {
  const parts = [checkIn.listen ? `${checkIn.name}, listen ${span(checkIn.lastsMin)}` : checkIn.name];
  if (control !== undefined) parts.push(`net control ${nameOf(plan, control)}`);
  if (reader !== undefined) parts.push(`${nameOf(plan, reader)} reads the check`);
  const news =
    moment.kind === 'gap'
      ? ` (the clocks leave ${clockText(minute)} out: agree on a time; calendars take this one)`
      : moment.kind === 'overlap'
        ? ` (${clockText(minute)} comes twice: this is the first, the second is at ${new Date(moment.secondMs).toISOString().slice(11, 16)}Z)`
        : '';
  return `${parts.join('; ')}${news}`;
}

function utcText({ local, utc }: Occurrence): string {
  const day = utc.date === local.date ? '' : utc.date > local.date ? '+1' : '-1';
  return `${clockText(utc.minute)}Z${day}`;
}

/** Members who are silent alike stand together. */
function silencesText(
  plan: Plan,
  silences: readonly Silence[],
  print: Lines,
  strong: (text: string) => string,
): string {
  const head = ['', 'Silence', 'Roll', 'Ladder', 'Together', 'Until'];
  const groups = new Map<string, { cells: readonly string[]; names: string[] }>();
  for (const { member, longest, lastCalled, calledBy } of silences) {
    const cells = longest
      ? [
          '',
          span(longest.gapMin),
          span(longest.rollMin),
          longest.ladder === undefined
            ? 'none'
            : `${span(longest.ladderMin)}${longest.untimedRungs > 0 ? ' *' : ''}`,
          span(longest.totalMin),
          longest.date,
        ]
      : [''];
    const news = [
      longest ? '' : calledBy.length === 0 ? 'no check-in calls them' : 'called once in the year',
      lastCalled === undefined ? '' : `nothing calls them after ${lastCalled}`,
    ].filter(Boolean);
    const key = [...cells, ...news].join('|');
    const known = groups.get(key) ?? {
      cells: [...cells, ...(news.length > 0 ? [news.join('; ')] : [])],
      names: [],
    };
    known.names.push(nameOf(plan, member));
    groups.set(key, known);
  }
  const widths = head.map((title, column) => {
    const cells = [...groups.values()].filter((group) => group.cells.length === head.length);
    return 2 + Math.max(title.length, ...cells.map((group) => group.cells[column]?.length ?? 0));
  });
  const rows = [...groups.values()].flatMap(({ cells, names }) => {
    const whole = cells.length === head.length;
    const row = print.row(whole ? [...cells, names.join(', ')] : cells, widths);
    return whole ? [row] : [row, print.say(names.join(', '), 4)];
  });
  const untimed = silences.some(({ longest }) => longest !== undefined && longest.untimedRungs > 0);
  return [
    strong('Longest silence before a member is missed'),
    print.row([...head, 'Members'], widths),
    ...rows,
    ...(untimed ? [print.say('* and rungs to which the plan gives no time', 2)] : []),
  ].join('\n');
}

function nameOf(plan: Plan, member: string): string {
  return plan.members.get(member)?.name ?? member;
}

function channelOf(plan: Plan, slot: number): string {
  return `${slot} ${plan.channels.get(slot)?.name ?? ''}`.trimEnd();
}

function weekday(date: string): string {
  return english.dayShort[isoWeekday(date) - 1] ?? '';
}

/** `UTC-5`, `UTC+5:30` */
function offsetText(offsetMin: number): string {
  const [hours, minutes] = [Math.floor(Math.abs(offsetMin) / 60), Math.abs(offsetMin) % 60];
  return `UTC${offsetMin < 0 ? '-' : '+'}${hours}${minutes === 0 ? '' : `:${String(minutes).padStart(2, '0')}`}`;
}

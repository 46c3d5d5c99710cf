/** Outages as text for people: the worst first, said in sentences, and pairs of failures gathered. */
import type { ThingKind } from '../consequences/hangs-on.ts';
import type { Lost, MemberOutage, Outage, Outages } from '../consequences/outages.ts';
import type { SharedPoints } from '../consequences/shared-points.ts';
import type { RungAt } from '../consequences/ways.ts';
import { span } from '../documents/figures.ts';
import type { Plan } from '../plan/model.ts';
import { failurePairs } from './failure-pairs.ts';
import type { LoadedSubject } from './load-subject.ts';
import type { OutagesOptions } from './outages.ts';
import { palette } from './palette.ts';
import { type Lines, lines } from './print-lines.ts';
import { columnsOf, displayWidth } from './terminal.ts';

type Paint = (text: string) => string;

const kinds: Readonly<Record<ThingKind, string>> = {
  place: 'place',
  asset: 'asset',
  repeater: 'repeater',
  digipeater: 'digipeater',
  mailbox: 'mailbox',
  channel: 'channel not usable',
  member: 'away',
};

export async function outagesText(
  { plan }: LoadedSubject,
  { single, double }: Outages,
  points: SharedPoints,
  options: OutagesOptions,
): Promise<string> {
  const painted = palette(process.stdout, options);
  const names = [plan.title, ...single.flatMap(({ failed }) => failed.map(({ name }) => name))];
  const print = lines(columnsOf(process.stdout), await displayWidth(names));
  const weak = pointsText(plan, points, print);
  const blocks = [
    `${painted.strong(print.say(`${plan.title}, revision ${plan.revision}`))}\n${print.say(
      single.length === 0
        ? 'No single failure takes anything from anybody.'
        : 'When one thing fails, the worst first:',
    )}`,
    ...single
      .toSorted((a, b) => harm(b) - harm(a))
      .map((outage) => outageText(plan, outage, print, painted.strong)),
    weak === '' ? '' : `${painted.strong('Weak spots')}\n${weak}`,
    options.two ? `${painted.strong('When two things fail')}\n${doubleText(plan, double, print)}` : '',
    painted.faint(
      print.say(
        `Off the air: no radio rung of a member's ladders is left. Cut off: no rung at all, not even a meeting. Hours are how long batteries hold; how long a repair takes no plan knows. Every path that the plan names is taken to close: \`readback paths\` predicts which do, and only a trial proves one.${
          options.two ? '' : ' With --two, what two failures do that neither does alone.'
        }`,
      ),
    ),
  ];
  return `${blocks.filter(Boolean).join('\n\n')}\n`;
}

/** Cut off before off the air before a lost check-in before a lost rung. */
function harm({ members, checkIns }: Outage): number {
  const count = (what: string) => members.filter(({ standing }) => standing?.what === what).length;
  return 1e9 * count('cut off') + 1e6 * count('off the air') + 1e3 * checkIns.length + members.length;
}

function outageText(
  plan: Plan,
  { failed, stopped, checkIns, members }: Outage,
  print: Lines,
  strong: Paint,
): string {
  const head = failed.map(({ name, kind }) => `${name} (${kinds[kind]})`).join(' and ');
  const say = (text: string) => print.say(text, 2, 4);
  const stops = gathered(stopped, ({ name }) => name);
  const losing = gathered(checkIns, (id) => plan.checkIns.get(id)?.name ?? id);
  const worst = members.filter(({ standing }) => standing !== undefined);
  const still = members.filter(({ standing }) => standing === undefined);
  return [
    strong(print.say(head)),
    ...(stops === '' ? [] : [say(`Stops: ${stops}.`)]),
    ...(losing === '' ? [] : [say(`Check-ins lost: ${losing}.`)]),
    ...standings(plan, worst).map(say),
    ...(still.length === 0
      ? []
      : [say(`Lose a rung, by its number, but not the radio: ${rungsLost(plan, still)}.`)]),
  ].join('\n');
}

/** Members who come off alike are said together. */
function standings(plan: Plan, members: readonly MemberOutage[], timed = true): readonly string[] {
  const groups = new Map<string, string[]>();
  for (const { member, standing, left } of members) {
    if (!standing) continue;
    const rest =
      left.length === 0
        ? ''
        : `; left: ${[...new Set(left.map((rung) => meetingText(plan, rung)))].join(', ')}`;
    const key = `${capitalised(standing.what)}${timed ? after(standing.afterMin) : ''}: NAMES${rest}.`;
    groups.set(key, [...(groups.get(key) ?? []), nameOf(plan, member)]);
  }
  return [...groups].map(([text, names]) => text.replace('NAMES', () => names.join(', ')));
}

function rungsLost(plan: Plan, members: readonly MemberOutage[]): string {
  return members
    .map(
      ({ member, rungs }) =>
        `${nameOf(plan, member)} (${rungs.map(({ what }) => what.index + 1).join(', ')})`,
    )
    .join(', ');
}

function meetingText(plan: Plan, { rung }: RungAt): string {
  if (rung.meet !== undefined)
    return `meet at ${plan.places.get(rung.meet)?.name ?? rung.meet}${rung.at === undefined ? '' : `, ${rung.at}`}`;
  return rung.other ?? 'a rung without a radio';
}

function pointsText(plan: Plan, { shared, parts, splits, oneChannel }: SharedPoints, print: Lines): string {
  const say = (text: string) => print.say(text, 2, 4);
  const namesOf = (ids: readonly string[]) => ids.map((id) => nameOf(plan, id)).join(', ');
  const apart = (left: readonly (readonly string[])[]) =>
    left
      .slice(1)
      .map((part) => namesOf(part))
      .join(' / ');
  return [
    ...shared.map(({ ladder, thing, rungs }) =>
      say(
        `${plan.ladders.get(ladder)?.name ?? ladder}: rungs ${rungs.map((index) => index + 1).join(' and ')} hang on one thing, ${thing.name}.`,
      ),
    ),
    ...(parts.length > 1 ? [say(`Can talk to nobody else even now: ${apart(parts)}.`)] : []),
    ...splits
      .filter(({ parts: left }) => left.length > 1)
      .map(({ thing, parts: left }) =>
        say(`Without ${thing.name} (${kinds[thing.kind]}) no channel joins the rest to: ${apart(left)}.`),
      ),
    ...(oneChannel.length === 0
      ? []
      : [
          say(
            `On the air by one channel alone: ${oneChannel
              .map(
                ({ member, slot }) =>
                  `${nameOf(plan, member)} (${slot} ${plan.channels.get(slot)?.name ?? ''})`,
              )
              .join(', ')}.`,
          ),
        ]),
  ].join('\n');
}

/** Pairs that do the same to the same members are gathered about the thing most of them share. */
function doubleText(plan: Plan, double: readonly Outage[], print: Lines): string {
  if (double.length === 0) return print.say('Nobody is worse off than with one of the two.', 2);
  const groups = new Map<string, Outage[]>();
  for (const outage of double) {
    const key = outage.members.map(({ member, standing }) => `${member} ${standing?.what ?? ''}`).join();
    groups.set(key, [...(groups.get(key) ?? []), outage]);
  }
  return [...groups.values()]
    .toSorted((a, b) => Math.max(...b.map(harm)) - Math.max(...a.map(harm)))
    .flatMap((alike) => {
      const [first] = alike;
      const what = standings(plan, first?.members ?? [], false).map((text) => print.say(text, 2, 4));
      return [...what, ...failurePairs(alike).map((text) => print.say(`if ${text}`, 6, 9))];
    })
    .join('\n');
}

/** `Ridge digipeater, Gap repeater after 12 h` */
function gathered<What>(lost: readonly Lost<What>[], name: (what: What) => string): string {
  return lost.map(({ what, afterMin }) => `${name(what)}${afterMin === 0 ? '' : after(afterMin)}`).join(', ');
}

function after(minutes: number): string {
  return minutes === 0 ? ' at once' : ` after ${span(minutes)}`;
}

function nameOf(plan: Plan, member: string): string {
  return plan.members.get(member)?.name ?? member;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

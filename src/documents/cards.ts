/**
 * Pocket cards: for each member who they are, what to call first, their ladder with when to move on, when
 * they check in, and the channels their radios hold. What to do now stands before any table.
 */
import type { Consequences } from '../consequences/consequences.ts';
import type { CheckIn, Ladder, Member, Plan, Rung } from '../plan/model.ts';
import { plainSpellingWords } from '../radio/spelling.ts';
import type { Law } from '../regulations/law.ts';
import { clock, daysText, megahertz, shift, span, starts, toneText } from './figures.ts';
import type { Words } from './words.ts';

export interface CardsData {
  readonly title: string;
  readonly language: string;
  readonly revision: number;
  readonly effective: string;
  readonly check: string;
  /** The check spelled: `Mike Seven Juliett Nine`. */
  readonly checkWords: string;
  readonly card: Plan['cards']['size'];
  readonly paper: 'Letter' | 'A4';
  readonly flip: Plan['cards']['flip'];
  readonly backShiftRightMm: number;
  readonly backShiftDownMm: number;
  /** True for sizes with room for more than the least. */
  readonly roomy: boolean;
  readonly timezone: string;
  readonly cards: readonly CardData[];
}

export interface CardData {
  readonly id: string;
  readonly name: string;
  /** Call signs, the amateur one first. */
  readonly calls: readonly string[];
  readonly first: { readonly slot: number; readonly name: string } | null;
  readonly ladders: readonly LadderData[];
  readonly checkIns: readonly CheckInData[];
  /** Channels the member may transmit on. */
  readonly channels: readonly ChannelData[];
  /** Channels their radios hold and on which they may only listen. */
  readonly listening: readonly ChannelData[];
  readonly notes: readonly string[];
}

export interface LadderData {
  readonly name: string;
  /** First names of those to be reached. */
  readonly reach: string;
  readonly rungs: readonly RungData[];
}

export interface RungData {
  readonly grade: string;
  /** Slot and name of a radio rung; null for one without a radio. */
  readonly channel: { readonly slot: number; readonly name: string } | null;
  /** What to do there. */
  readonly act: string;
  /** When to move on: `5 min`; empty where the rung is the last word. */
  readonly within: string;
}

export interface CheckInData {
  readonly name: string;
  readonly when: string;
  readonly days: string;
  readonly slot: number;
  readonly channel: string;
  readonly lasts: string;
  readonly listen: boolean;
  readonly control: boolean;
}

export interface ChannelData {
  readonly slot: number;
  readonly name: string;
  readonly receive: string;
  readonly shift: string;
  readonly tone: string;
  readonly power: string;
  readonly listenOnly: boolean;
  readonly use: string;
}

export function gatherCards(
  plan: Plan,
  law: Law,
  consequences: Consequences,
  check: string,
  words: Words,
): CardsData {
  const { cards } = plan;
  return {
    title: plan.title,
    language: words.language,
    revision: plan.revision,
    effective: plan.effective,
    check,
    checkWords: plainSpellingWords(check).join(' '),
    card: cards.size,
    paper: cards.sheet === 'letter' ? 'Letter' : 'A4',
    flip: cards.flip,
    backShiftRightMm: cards.backShiftMm[0],
    backShiftDownMm: cards.backShiftMm[1],
    roomy: cards.size !== 'id-1',
    timezone: plan.timezone,
    cards: [...plan.members.values()].map((member) => cardOf(plan, law, consequences, member, words)),
  };
}

function cardOf(plan: Plan, law: Law, consequences: Consequences, member: Member, words: Words): CardData {
  const ladders = consequences.laddersOf(member.id).map((ladder) => ladderOf(plan, ladder, words));
  const firstRung = ladders[0]?.rungs.find((rung) => rung.channel !== null);
  const checkIns = consequences.checkInsOf(member.id);
  const channels = channelsOf(consequences, member, words);
  const first = firstRung?.channel ?? channelName(plan, checkIns[0]?.channel);
  return {
    id: member.id,
    name: member.name,
    calls: callSigns(member, law),
    first,
    ladders,
    checkIns: checkIns.map((checkIn) => checkInOf(plan, member, checkIn, words)),
    channels: channels.filter((channel) => !channel.listenOnly),
    listening: channels.filter((channel) => channel.listenOnly),
    notes: plan.cards.notes,
  };
}

function callSigns(member: Member, law: Law): readonly string[] {
  const order = law.country.services.map((service) => service.id);
  return [...member.licences]
    .toSorted(([a], [b]) => order.indexOf(a) - order.indexOf(b))
    .flatMap(([, licence]) => (licence.call === undefined ? [] : [licence.call]));
}

function ladderOf(plan: Plan, ladder: Ladder, words: Words): LadderData {
  return {
    name: ladder.name,
    reach: ladder.reach.map((id) => plan.members.get(id)?.name.split(' ')[0] ?? id).join(', '),
    rungs: ladder.rungs.map((rung) => rungOf(plan, rung, words)),
  };
}

function rungOf(plan: Plan, rung: Rung, words: Words): RungData {
  const within = rung.withinMin === undefined ? '' : span(rung.withinMin);
  const grade = words.grade[rung.grade];
  if (rung.channel === undefined) {
    const place = rung.meet === undefined ? undefined : (plan.places.get(rung.meet)?.name ?? rung.meet);
    const acts = [place === undefined ? '' : words.meet(place, rung.at), rung.other ?? ''].filter(Boolean);
    return { grade, channel: null, act: acts.join('; '), within };
  }
  const acts = [
    rung.from === undefined ? '' : words.from(plan.places.get(rung.from)?.name ?? rung.from),
    rung.mailbox === undefined
      ? ''
      : words.mailbox(
          plan.mailboxes.get(rung.mailbox)?.call ?? rung.mailbox,
          rung.through.map((id) => plan.digipeaters.get(id)?.call ?? id),
        ),
    rung.calls === undefined ? '' : words.calls(rung.calls),
    rung.other ?? '',
  ].filter(Boolean);
  return { grade, channel: channelName(plan, rung.channel), act: acts.join(', '), within };
}

function channelName(plan: Plan, slot: number | undefined): { slot: number; name: string } | null {
  const channel = slot === undefined ? undefined : plan.channels.get(slot);
  return channel === undefined ? null : { slot: channel.slot, name: channel.name };
}

function checkInOf(plan: Plan, member: Member, checkIn: CheckIn, words: Words): CheckInData {
  return {
    name: checkIn.name,
    when:
      checkIn.repeatsMin === undefined
        ? clock(checkIn.at, words)
        : starts(checkIn.at, checkIn.until, checkIn.repeatsMin, words),
    days: daysText(checkIn.days, words),
    slot: checkIn.channel,
    channel: plan.channels.get(checkIn.channel)?.name ?? '',
    lasts: span(checkIn.lastsMin),
    listen: checkIn.listen,
    control: checkIn.control.includes(member.id),
  };
}

function channelsOf(consequences: Consequences, member: Member, words: Words): readonly ChannelData[] {
  return [...consequences.channels.values()]
    .toSorted((a, b) => a.slot - b.slot)
    .flatMap((on) => {
      const uses = member.radios.flatMap((radio) => consequences.use(member.id, radio, on.slot) ?? []);
      const held = uses.filter((use) => use.may !== 'not held');
      if (held.length === 0) return [];
      const sending = held.filter((use) => use.may === 'transmit');
      // Radios name their settings, and a name is what their displays show.
      const settings = [...new Set(sending.flatMap((use) => (use.setting ? [use.setting.name] : [])))];
      const listenOnly = sending.length === 0;
      return [
        {
          slot: on.slot,
          name: on.name,
          receive: megahertz(on.receiveHz),
          shift: listenOnly ? '' : shift(on),
          tone: listenOnly ? '' : toneText(on),
          power: listenOnly ? words.listenOnly : settings.join('/'),
          listenOnly,
          use: on.channel.use ?? '',
        },
      ];
    });
}

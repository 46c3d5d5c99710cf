/**
 * Pocket cards: for each member who they are, what to call first, their ladder with when to move on, when
 * they check in, and the channels their radios hold. What to do now stands before any table.
 *
 * The general card is for guests: no names, every channel with its service. It need not go into a wallet, so it
 * is always of size A6, whatever the members carry.
 */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { Consequences } from '../consequences/consequences.ts';
import { shortName } from '../consequences/short-names.ts';
import type { CheckIn, Member, Plan, Rung } from '../plan/model.ts';
import { formatSpacing } from '../radio/format-quantity.ts';
import { formatTone } from '../radio/tone.ts';
import { type Law, serviceById } from '../regulations/law.ts';
import { cardCode } from './card-code.ts';
import { type CardRadios, callSignsByService, cardRadios, displayedName } from './card-radios.ts';
import { clock, daysText, megahertz, shift, span, starts, toneText } from './figures.ts';
import { heldTogether } from './held-together.ts';
import { triedText } from './tried.ts';
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
  readonly flipWords: string;
  /** Both sides of a card stand on one side of the sheet, and are folded back to back. */
  readonly folded: boolean;
  /** The largest type that is of use on a card of this size. */
  readonly fromPt: number;
  /** True for sizes with room for more than the least: trials beside rungs, uses below channels. */
  readonly roomy: boolean;
  readonly cards: readonly CardData[];
}

export interface CardData {
  /** Printed beside the card: the member's id. */
  readonly id: string;
  /** True for the card without names. */
  readonly general: boolean;
  readonly name: string;
  /** Call signs, each with the radios it is said on, or its service, where there are several. */
  readonly calls: readonly string[];
  /** The bearer's radios, where it matters which one is taken up; else empty. */
  readonly radios: CardRadios['legend'];
  readonly first: {
    readonly slot: number;
    readonly name: string;
    /** Stands on one line, whatever size that takes. */
    readonly short: boolean;
    /** Mark of the radio that serves for it; empty where any will do. */
    readonly on: string;
    /** The bearer may not transmit there, and listens for the others. */
    readonly listen: boolean;
  } | null;
  /** Says what the arrow, the square and the minutes mean, where there is room. */
  readonly signs: boolean;
  readonly ladders: readonly LadderData[];
  readonly checkIns: readonly CardCheckIn[];
  /** Channels as rows of the table, with air between groups. */
  readonly channels: readonly ChannelData[];
  /** Channels only listened to that stand in a line below the table, where a small card has no rows for them. */
  readonly listening: readonly ChannelData[];
  /** The spacing of every channel; empty where they differ or the card has no room. */
  readonly spacing: string;
  /** The first of the group's notes, under the first call; empty where there is none or the front has no room. */
  readonly urgent: string;
  /** The other notes, at the foot of the back. */
  readonly notes: readonly string[];
  /** The figure of the code on the back, and its width; null where the plan asks for none. */
  readonly code: { readonly figure: string; readonly text: string; readonly mm: number } | null;
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
  /** Marks of the radios that serve for it; empty where any will do. */
  readonly on: string;
  /** What to do there. */
  readonly act: string;
  /** When to move on: `5 min`; empty where the rung is the last word. */
  readonly within: string;
  /** What was heard when it was tried, or that nobody has; empty where there is no radio or no room. */
  readonly tried: string;
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
  /** Others take their turn at it. */
  readonly turns: boolean;
}

/** A check-in on a member's card, with which of their radios: `on B`; empty where any will do. */
export interface CardCheckIn extends CheckInData {
  readonly on: string;
}

export interface ChannelData {
  readonly slot: number;
  readonly name: string;
  /** Stands on one line, so that a figure in the name is not read as one in the table. */
  readonly short: boolean;
  readonly receive: string;
  readonly shift: string;
  readonly tone: string;
  /** Settings of the power, with the marks of the radios; on the general card the service. */
  readonly power: string;
  readonly listenOnly: boolean;
  /** Marks of the radios that serve for it; empty where every radio does on every channel. */
  readonly on: string;
  /** What it is for and what else to know of it; empty where the card has no room. */
  readonly more: string;
  readonly spacing: string;
  /** Begins a group of rows. */
  readonly air: boolean;
}

/** Lines of 8 pt that a side holds, less those of its head and foot; what is only nice to know gives way first. */
const linesOf = { 'id-1': 6, fold: 6, a7: 22, index: 14, a6: 34 } as const;
/** Channels on the back of a guest card of size A6. */
const mostGuestChannels = 28;
/** Rows stand in groups of at most this many. */
const groupOf = 4;

const largestPt = { 'id-1': 11, fold: 11, a7: 12, index: 13, a6: 13 } as const;

export function gatherCards(
  plan: Plan,
  law: Law,
  consequences: Consequences,
  check: string,
  words: Words,
  members: readonly Member[] = [...plan.members.values()],
): CardsData {
  const { cards } = plan;
  const roomy = cards.size !== 'id-1' && cards.size !== 'fold';
  const context: Context = { plan, law, consequences, check, words, roomy };
  return {
    title: plan.title,
    language: words.language,
    revision: plan.revision,
    effective: plan.effective,
    check,
    checkWords: words.spelled(check),
    card: cards.size,
    paper: cards.sheet === 'letter' ? 'Letter' : 'A4',
    flip: cards.flip,
    flipWords: words.flip[cards.flip],
    folded: cards.size === 'fold',
    fromPt: largestPt[cards.size],
    roomy,
    cards: members.map((member) => cardOf(context, member)),
  };
}

/** A sheet with the one card that names nobody. */
export function gatherGeneralCard(
  plan: Plan,
  law: Law,
  consequences: Consequences,
  check: string,
  words: Words,
): CardsData {
  const large: Plan = { ...plan, cards: { ...plan.cards, size: 'a6' } };
  const sheet = gatherCards(large, law, consequences, check, words, []);
  const card = generalCard({ plan: large, law, consequences, check, words, roomy: sheet.roomy });
  const parts = Math.ceil(card.channels.length / mostGuestChannels);
  // A sheet holds two: the same twice, or, where one back does not hold all channels, one after another.
  const cards =
    parts <= 1
      ? [card, card]
      : Array.from({ length: parts }, (_, part) => ({
          ...card,
          id: `${words.guestCard} ${part + 1}`,
          channels: inGroups(card.channels.slice(part * mostGuestChannels, (part + 1) * mostGuestChannels)),
        }));
  return { ...sheet, cards };
}

/** The same card with its first note on the back, for a front that has no line to spare. */
export function withNotesBehind(card: CardData): CardData {
  return card.urgent === '' ? card : { ...card, urgent: '', notes: [card.urgent, ...card.notes] };
}

interface Context {
  readonly plan: Plan;
  readonly law: Law;
  readonly consequences: Consequences;
  readonly check: string;
  readonly words: Words;
  readonly roomy: boolean;
}

function cardOf(context: Context, member: Member): CardData {
  const { plan, law, consequences, words, roomy } = context;
  const radios = cardRadios(plan, law, consequences, member, words);
  const shown = displayedPlan(plan, consequences, member);
  const ladders = consequences.laddersOf(member.id).map(
    (ladder): LadderData => ({
      name: ladder.name,
      reach: consequences
        .membersOf(ladder.reach)
        .filter((id) => id !== member.id)
        .map((id) => shortName(plan, id))
        .join(', '),
      rungs: ladder.rungs.map((rung) => {
        const listens = onlyListens(consequences, member.id, rung.channel);
        const plain = {
          ...rungOf(shown, rung, words, listens),
          on: rung.channel === undefined ? '' : radios.neededOn(rung.channel),
        };
        const tried = roomy ? triedText(plan, member, rung, words) : '';
        return tried === words.untried
          ? { ...plain, act: [plain.act, tried].filter(Boolean).join('; '), tried: '' }
          : { ...plain, tried };
      }),
    }),
  );
  const firstRung = ladders[0]?.rungs.find((rung) => rung.channel !== null);
  const checkIns = consequences.checkInsOf(member.id).map((checkIn) => ({
    ...checkInOf(shown, checkIn, checkIn.control.includes(member.id), words),
    listen: checkIn.listen || onlyListens(consequences, member.id, checkIn.channel),
    on: onRadio(radios, checkIn.channel, words),
  }));
  const first = firstRung?.channel ?? channelName(shown, checkIns[0]?.slot);
  return {
    id: member.id,
    general: false,
    name: member.name,
    calls: radios.calls,
    first: firstCall(
      first,
      onlyListens(consequences, member.id, first?.slot),
      first === null ? '' : radios.neededOn(first.slot),
    ),
    ladders,
    checkIns,
    signs: hasRoomForSigns(context, ladders, checkIns.length),
    ...backOf(context, member.id, channelsOf({ ...context, plan: shown }, member, radios), radios.legend),
  };
}

/** The plan with its channels under the names that this member's radios show. */
function displayedPlan(plan: Plan, consequences: Consequences, member: Member): Plan {
  const channels = [...plan.channels].map(([slot, channel]) => {
    const name = displayedName(plan, consequences, member, slot, channel.name);
    return [slot, name === channel.name ? channel : { ...channel, name }] as const;
  });
  return { ...plan, channels: new Map(channels) };
}

function onRadio(radios: CardRadios, slot: number | undefined, words: Words): string {
  const needed = slot === undefined ? '' : radios.neededOn(slot);
  return needed === '' ? '' : words.onRadio(needed);
}

/** No names, call signs or contacts: the ladder that most members follow, the channels and when somebody listens. */
function generalCard(context: Context): CardData {
  const { plan, law, consequences, words } = context;
  const [ladder] = [...plan.ladders.values()].toSorted(
    (a, b) => consequences.membersOf(b.who).length - consequences.membersOf(a.who).length,
  );
  const rungs = ladder?.rungs.map((rung) => ({ ...rungOf(plan, rung, words), on: '', tried: '' })) ?? [];
  const channels = [...consequences.channels.values()]
    .toSorted((a, b) => a.slot - b.slot)
    .map((on) => {
      const [service] = on.services;
      const licence = service === undefined ? '' : serviceOf(law, service, words);
      return channelData(context, on, on.transmitHz === undefined, licence);
    });
  const first = rungs.find((rung) => rung.channel !== null)?.channel ?? null;
  const ladders = ladder === undefined ? [] : [{ name: ladder.name, reach: '', rungs }];
  // Whoever keeps watch for one member alone listens for that member, and not for guests.
  const checkIns = [...plan.checkIns.values()].filter(
    ({ listen, who }) => !listen || consequences.membersOf(who).length !== 1,
  );
  return {
    id: words.guestCard,
    general: true,
    name: plan.title,
    calls: [],
    first: firstCall(
      first,
      first !== null && consequences.channels.get(first.slot)?.transmitHz === undefined,
      '',
    ),
    ladders,
    checkIns: checkIns.map((checkIn) => ({ ...checkInOf(plan, checkIn, false, words), on: '' })),
    signs: hasRoomForSigns(context, ladders, checkIns.length),
    ...backOf(context, words.guestCard, channels),
  };
}

function serviceOf(law: Law, id: string, words: Words): string {
  const name = words.service(id);
  return serviceById(law, id)?.licence === 'none' ? words.noLicence(name) : name;
}

function backOf(
  { plan, consequences, check, roomy }: Context,
  id: string,
  channels: readonly ChannelData[],
  radios: CardRadios['legend'] = [],
): Pick<CardData, 'radios' | 'channels' | 'spacing' | 'listening' | 'urgent' | 'notes' | 'code'> {
  const lines = linesOf[plan.cards.size] - (roomy && radios.length > 0 ? 1 : 0);
  const asRows = roomy || channels.length <= lines;
  const rows = asRows ? channels : channels.filter((channel) => !channel.listenOnly);
  const text = cardCode(
    check,
    plan.revision,
    channels.flatMap(({ slot, listenOnly }) => {
      const on = consequences.channels.get(slot);
      return on === undefined ? [] : [{ on, listenOnly }];
    }),
  );
  // What is the same on every channel is said once, below them.
  const [spacing = '', ...others] = roomy ? new Set(channels.map((channel) => channel.spacing)) : [];
  const saidOnce = others.length === 0 && channels.length > 1;
  const full = rows.map((row) => ({
    ...row,
    more: roomy ? heldTogether([row.more, saidOnce ? '' : row.spacing].filter(Boolean).join('; ')) : '',
  }));
  const taken = full.reduce((sum, { more }) => sum + (more === '' ? 1 : 2), saidOnce ? 1 : 0);
  const [urgent = '', ...notes] = plan.cards.notes;
  return {
    radios,
    channels: inGroups(taken <= lines ? full : rows.map((row) => ({ ...row, more: '' }))),
    spacing: saidOnce && rows.length > 0 ? heldTogether(spacing) : '',
    listening: asRows ? [] : channels.filter((channel) => channel.listenOnly),
    urgent,
    notes,
    code: plan.cards.qr === true ? { figure: `code-${id}`, text, mm: 0 } : null,
  };
}

/** Groups of three to five rows are taken in at a glance (common practice); they are made as even as they go. */
function inGroups(channels: readonly ChannelData[]): readonly ChannelData[] {
  const groups = Math.max(1, Math.round(channels.length / groupOf));
  const starts = new Set(
    Array.from({ length: groups - 1 }, (_, group) => Math.round(((group + 1) * channels.length) / groups)),
  );
  return channels.map((channel, index) => ({ ...channel, air: starts.has(index) }));
}

/** Call signs, in the order of the country's services. */
export function callSigns(member: Member, law: Law): readonly string[] {
  return callSignsByService(member, law).map(({ call }) => call);
}

/** True where they hold the channel but may not transmit on it; a channel that no radio of theirs holds is a finding. */
function onlyListens(consequences: Consequences, member: string, slot: number | undefined): boolean {
  return slot !== undefined && consequences.best(member, slot)?.may === 'listen only';
}

/** Two lines are left for it when every rung and every check-in has its own; long ones take more, and size gives way. */
function hasRoomForSigns(
  { plan, roomy }: Context,
  ladders: readonly LadderData[],
  checkIns: number,
): boolean {
  const lines = ladders.flatMap(({ rungs }) => rungs.map(({ tried }) => (tried === '' ? 1 : 2)));
  const taken = lines.reduce((sum, each) => sum + each, ladders.length + checkIns);
  return roomy && taken > 0 && taken + 2 <= linesOf[plan.cards.size];
}

/** @param listens whoever it is for may not transmit on its channel, and neither calls nor sends there */
export function rungOf(
  plan: Plan,
  rung: Rung,
  words: Words,
  listens = false,
): Omit<RungData, 'on' | 'tried'> {
  const within = rung.withinMin === undefined ? '' : span(rung.withinMin);
  const grade = words.grade[rung.grade];
  if (rung.channel === undefined) {
    const place = rung.meet === undefined ? undefined : (plan.places.get(rung.meet)?.name ?? rung.meet);
    const acts = [place === undefined ? '' : words.meet(place, rung.at), rung.other ?? ''].filter(Boolean);
    return { grade, channel: null, act: acts.join('; '), within };
  }
  const place = rung.from === undefined ? '' : words.from(plan.places.get(rung.from)?.name ?? rung.from);
  if (listens) {
    const acts = [place, words.listenOnly, rung.other ?? ''].filter(Boolean);
    return { grade, channel: channelName(plan, rung.channel), act: acts.join(', '), within };
  }
  const acts = [
    place,
    rung.mailbox === undefined
      ? ''
      : words.mailbox(
          plan.mailboxes.get(rung.mailbox)?.call ?? rung.mailbox,
          rung.through.map((id) => plan.digipeaters.get(id)?.call ?? id),
        ),
    rung.calls === undefined ? '' : words.calls(rung.calls).replace(' ', '\u00a0'),
    rung.other ?? '',
  ].filter(Boolean);
  return { grade, channel: channelName(plan, rung.channel), act: acts.join(', '), within };
}

function firstCall(channel: RungData['channel'], listen: boolean, on: string): CardData['first'] {
  return channel === null ? null : { ...channel, short: isShort(channel.name), listen, on };
}

/** A name as long as radios show one is kept whole; a longer one may be broken. */
function isShort(name: string): boolean {
  return name.length <= 8;
}

function channelName(plan: Plan, slot: number | undefined): { slot: number; name: string } | null {
  const channel = slot === undefined ? undefined : plan.channels.get(slot);
  return channel === undefined ? null : { slot: channel.slot, name: channel.name };
}

export function checkInOf(plan: Plan, checkIn: CheckIn, control: boolean, words: Words): CheckInData {
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
    control,
    turns: checkIn.control.length > 1,
  };
}

function channelsOf(context: Context, member: Member, radios: CardRadios): readonly ChannelData[] {
  const { plan, consequences, words } = context;
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
      const row = channelData(context, on, listenOnly, listenOnly ? words.listenOnly : settings.join('/'));
      const name = plan.channels.get(on.slot)?.name ?? row.name;
      const marks = radios.marksOn(on.slot);
      return [
        {
          ...row,
          name,
          short: isShort(name),
          power: listenOnly ? row.power : powerWith(row.power, marks),
          on: marks,
        },
      ];
    });
}

/** A short setting keeps its radio on the line; a longer one may part from it, or a narrow card had no room for it. */
function powerWith(power: string, marks: string): string {
  return marks === '' ? power : `${power}${power.length <= 6 ? '\u00a0' : ' '}${marks}`;
}

function channelData(
  { words, roomy }: Context,
  on: ChannelParticulars,
  listenOnly: boolean,
  power: string,
): ChannelData {
  const more = [
    on.channel.use ?? '',
    on.receiveTone === undefined ? '' : words.toneBack(formatTone(on.receiveTone)),
  ].filter(Boolean);
  return {
    slot: on.slot,
    name: on.name,
    short: isShort(on.name),
    receive: megahertz(on.receiveHz),
    shift: listenOnly ? '' : shift(on),
    tone: listenOnly ? '' : toneText(on),
    power,
    listenOnly,
    on: '',
    more: roomy ? more.join('; ') : '',
    spacing: formatSpacing(on.spacingHz),
    air: false,
  };
}

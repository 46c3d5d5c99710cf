/** Two revisions of a plan, by meaning: which channels, members, check-ins and ladders changed, and in what. */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { Consequences } from '../consequences/consequences.ts';
import type { Entry } from '../consequences/entries.ts';
import type { CheckIn, Days, EntryField, Ladder, Member, Plan, Rung, TimeOfDay } from '../plan/model.ts';
import { formatFrequency, formatOffset, formatSpacing } from '../radio/format-quantity.ts';
import { formatTone } from '../radio/tone.ts';
import { type OldCard, oldCards } from './old-cards.ts';
import { type RadioReentry, reentries } from './reentries.ts';

export interface Revision {
  readonly plan: Plan;
  readonly consequences: Consequences;
  readonly check: string;
}

/** How documents spell what is compared, so that a change reads as it is printed. */
export interface Spelling {
  entry(entry: Entry, field: EntryField): string;
  clock(time: TimeOfDay): string;
  days(days: Days): string;
}

export interface FieldChange {
  readonly field: string;
  /** Empty where there was, or is, nothing. */
  readonly was: string;
  readonly is: string;
}

export interface Change {
  readonly id: string;
  readonly name: string;
  readonly kind: 'new' | 'gone' | 'changed';
  readonly fields: readonly FieldChange[];
}

export interface ChannelChange extends Change {
  readonly slot: number;
  /** The slot leads to another frequency than before: whoever holds the old card is somewhere else. */
  readonly meansOther: boolean;
}

export interface RevisionComparison {
  readonly channels: readonly ChannelChange[];
  readonly members: readonly Change[];
  readonly checkIns: readonly Change[];
  readonly ladders: readonly Change[];
  readonly radios: readonly RadioReentry[];
  readonly cards: readonly OldCard[];
  /** Nothing that a card, a worksheet or a calendar rests on changed. */
  readonly same: boolean;
}

export function compareRevisions(old: Revision, now: Revision, spelling: Spelling): RevisionComparison {
  const channels = channelChanges(old, now);
  const fields = { checkIn: checkInFields(spelling), ladder: ladderFields };
  const checkIns = changes(
    described(old.plan.checkIns, (each) => fields.checkIn(old.consequences, each)),
    described(now.plan.checkIns, (each) => fields.checkIn(now.consequences, each)),
  );
  const ladders = changes(
    described(old.plan.ladders, (each) => fields.ladder(old, each)),
    described(now.plan.ladders, (each) => fields.ladder(now, each)),
  );
  const members = changes(
    described(old.plan.members, memberFields),
    described(now.plan.members, memberFields),
  );
  const radios = reentries(old, now, spelling);
  return {
    channels,
    members,
    checkIns,
    ladders,
    radios,
    cards: oldCards(old, now, { channels, checkIns, ladders }),
    same: old.check === now.check,
  };
}

function channelChanges(old: Revision, now: Revision): ChannelChange[] {
  const slots = [...new Set([...old.plan.channels.keys(), ...now.plan.channels.keys()])].toSorted(
    (a, b) => a - b,
  );
  return slots.flatMap((slot): ChannelChange[] => {
    const [was, is] = [old.consequences.channels.get(slot), now.consequences.channels.get(slot)];
    const [before, after] = [was && channelFields(was), is && channelFields(is)];
    const fields = fieldChanges(before, after);
    if (fields.length === 0) return [];
    const kind = was === undefined ? 'new' : is === undefined ? 'gone' : 'changed';
    const name = is?.name ?? was?.name ?? '';
    const meansOther = was !== undefined && is !== undefined && was.receiveHz !== is.receiveHz;
    return [{ id: String(slot), slot, name, kind, fields: kind === 'changed' ? fields : [], meansOther }];
  });
}

type Fields = ReadonlyMap<string, string>;

function channelFields(on: ChannelParticulars): Fields {
  return new Map([
    ['name', on.name],
    ['receive', formatFrequency(on.receiveHz)],
    ['transmit', on.transmitHz === undefined ? 'listen only' : formatFrequency(on.transmitHz)],
    ['offset', on.direction === 'none' ? '' : formatOffset((on.transmitHz ?? on.receiveHz) - on.receiveHz)],
    ['tone', on.tone ? formatTone(on.tone) : ''],
    ['receive tone', on.receiveTone ? formatTone(on.receiveTone) : ''],
    ['width', formatSpacing(on.spacingHz)],
    ['mode', on.mode],
    ['power', String(on.channel.power ?? '')],
    ['use', on.channel.use ?? ''],
  ]);
}

function memberFields(member: Member): Fields {
  const licences = [...member.licences].map(
    ([service, { class: level, call, expires }]): [string, string] => [
      `${service} licence`,
      [level, call, expires && `to ${expires}`].filter(Boolean).join(' ') || 'held',
    ],
  );
  return new Map([
    ['name', member.name],
    ...licences,
    ['radios', member.radios.join(', ')],
    ['at', member.at ?? ''],
    ['roams', member.roams.join(', ')],
  ]);
}

const checkInFields =
  ({ clock, days }: Spelling) =>
  (consequences: Consequences, checkIn: CheckIn): Fields =>
    new Map([
      ['name', checkIn.name],
      ['channel', String(checkIn.channel)],
      ['days', days(checkIn.days)],
      ['at', clock(checkIn.at)],
      ['until', checkIn.until === undefined ? '' : clock(checkIn.until)],
      ['repeats', checkIn.repeatsMin === undefined ? '' : `${checkIn.repeatsMin} min`],
      ['lasts', `${checkIn.lastsMin} min`],
      ['listen', checkIn.listen ? 'yes' : ''],
      ['who', consequences.membersOf(checkIn.who).join(', ')],
      ['control', checkIn.control.join(', ')],
      ['turn', checkIn.control.length > 1 ? checkIn.turn : ''],
      ['missed', checkIn.missed ?? ''],
    ]);

function ladderFields({ consequences }: Revision, ladder: Ladder): Fields {
  const rungs = ladder.rungs.map((rung, index): [string, string] => [`rung ${index + 1}`, rungText(rung)]);
  return new Map([
    ['name', ladder.name],
    ['who', consequences.membersOf(ladder.who).join(', ')],
    ['reach', ladder.reach.join(', ')],
    ...rungs,
  ]);
}

function rungText(rung: Rung): string {
  return [
    rung.grade,
    rung.channel === undefined ? '' : `channel ${rung.channel}`,
    rung.from === undefined ? '' : `from ${rung.from}`,
    rung.mailbox === undefined ? '' : `mailbox ${[rung.mailbox, ...rung.through].join(' through ')}`,
    rung.meet === undefined ? '' : `meet ${rung.meet}`,
    rung.at ?? '',
    rung.other ?? '',
    rung.calls === undefined ? '' : `${rung.calls} calls`,
    rung.withinMin === undefined ? '' : `within ${rung.withinMin} min`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

interface Described {
  readonly name: string;
  readonly fields: Fields;
}

function described<Each extends { readonly id: string; readonly name: string }>(
  entries: ReadonlyMap<string, Each>,
  fields: (each: Each) => Fields,
): ReadonlyMap<string, Described> {
  return new Map([...entries].map(([id, each]) => [id, { name: each.name, fields: fields(each) }]));
}

function changes(old: ReadonlyMap<string, Described>, now: ReadonlyMap<string, Described>): Change[] {
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((id): Change[] => {
    const [was, is] = [old.get(id), now.get(id)];
    const name = is?.name ?? was?.name ?? id;
    if (was === undefined || is === undefined)
      return [{ id, name, kind: was === undefined ? 'new' : 'gone', fields: [] }];
    const fields = fieldChanges(was.fields, is.fields);
    return fields.length === 0 ? [] : [{ id, name, kind: 'changed', fields }];
  });
}

function fieldChanges(was: Fields | undefined, is: Fields | undefined): FieldChange[] {
  const keys = new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])]);
  return [...keys].flatMap((field) => {
    const [before, after] = [was?.get(field) ?? '', is?.get(field) ?? ''];
    return before === after ? [] : [{ field, was: before, is: after }];
  });
}

/** What was really entered in a radio, held against what the plan says of its kind: every difference by slot and field. */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import type { Cause } from './cause.ts';
import { type Effect, faultEffect } from './fault-effect.ts';
import { likelyCause } from './likely-cause.ts';
import { matchField } from './match-field.ts';
import {
  type Entered,
  type EnteredChannel,
  enteredFields,
  fieldWords,
  type UnclearEntry,
} from './read-entries.ts';
import { wholeSlotCauses } from './whole-slot.ts';

export interface Difference {
  readonly slot: number;
  /** The channel's name in the plan; empty for a slot the plan does not have. */
  readonly name: string;
  /** `slot` where the whole slot is wrong: empty, or not in the plan. */
  readonly field: EntryField | 'slot';
  readonly shown: string;
  readonly planned: string;
  /** What is and what should be: "the offset direction is plus; the plan has minus". */
  readonly message: string;
  /** What to press: "set offset direction to minus". */
  readonly press: string;
  readonly cause?: Cause;
  readonly effect: Effect;
}

/** Fields of one slot that nobody read, in the order of the menu. */
export interface UnreadSlot {
  readonly slot: number;
  readonly name: string;
  readonly fields: readonly EntryField[];
  /** Nothing of the slot was read. */
  readonly whole: boolean;
}

export interface Audit {
  readonly differences: readonly Difference[];
  readonly unclear: readonly UnclearEntry[];
  readonly unread: readonly UnreadSlot[];
  /** Slots of the plan that this kind of radio holds, and how many of them were read. */
  readonly slots: number;
  readonly slotsRead: number;
  /** No difference, nothing unclear, and of every slot read what decides whom it hears and who hears it. */
  readonly clean: boolean;
}

export interface AuditSubject {
  readonly radio: Radio;
  /** In order of slots. */
  readonly entries: readonly Entry[];
  readonly entered: Entered;
  /** What the last revision had for this kind of radio. */
  readonly lastEntries?: readonly Entry[];
  /** A value as the worksheet prints it. */
  say(entry: Entry, field: EntryField): string;
}

export function compareEntries(subject: AuditSubject): Audit {
  const { radio, entries, entered } = subject;
  const bySlot = new Map(entered.channels.map((channel) => [channel.slot, channel]));
  const planned = new Set(entries.map(({ slot }) => slot));
  const whole = wholeSlotCauses(entered.channels, entries, radio);
  const last = new Map((subject.lastEntries ?? []).map((entry) => [entry.slot, entry]));
  const differences: Difference[] = [];
  for (const [index, entry] of entries.entries()) {
    const channel = bySlot.get(entry.slot);
    if (channel?.empty) differences.push(emptySlot(entry));
    else if (channel !== undefined)
      differences.push(
        ...channelDifferences(
          subject,
          channel,
          entry,
          entries[index - 1],
          last.get(entry.slot),
          whole.get(entry.slot),
        ),
      );
  }
  for (const channel of entered.channels) {
    const cause = whole.get(channel.slot);
    if (!planned.has(channel.slot) && !channel.empty)
      differences.push(strangeSlot(channel, last.has(channel.slot), cause));
  }
  const unread = entries.flatMap((entry) => unreadOf(radio, entry, bySlot.get(entry.slot), entered.unclear));
  const listening = new Set(entries.filter(({ senders }) => senders.length === 0).map(({ slot }) => slot));
  const slotsRead = entries.filter(({ slot }) => bySlot.has(slot)).length;
  return {
    differences: differences.toSorted((a, b) => a.slot - b.slot),
    unclear: entered.unclear,
    unread,
    slots: entries.length,
    slotsRead,
    clean:
      differences.length === 0 &&
      entered.unclear.length === 0 &&
      !unread.some(
        (slot) => slot.whole || slot.fields.some((field) => decides(field, listening.has(slot.slot))),
      ),
  };
}

/** A name, a step or a power that was not read leaves a radio usable; one of these unread may be the very fault. */
function decides(field: EntryField, listenOnly: boolean): boolean {
  switch (field) {
    case 'receive':
    case 'receive-tone':
      return true;
    case 'transmit':
    case 'offset-direction':
    case 'offset':
    case 'tone':
      return !listenOnly;
    default:
      return false;
  }
}

function* channelDifferences(
  { radio, say }: AuditSubject,
  channel: EnteredChannel,
  entry: Entry,
  before: Entry | undefined,
  lastRevision: Entry | undefined,
  whole: Cause | undefined,
): Generator<Difference> {
  for (const field of enteredFields) {
    if (matchField(channel.shown, entry, field, radio) !== false) continue;
    const cause = whole ?? likelyCause({ field, channel, entry, radio, before, lastRevision });
    const planned = field === 'transmit' && entry.transmitHz === undefined ? 'none' : say(entry, field);
    const shown = shownText(channel, field);
    const listenOnly = entry.senders.length === 0 && (field === 'offset-direction' || field === 'transmit');
    const plan = listenOnly ? `the plan only listens there` : `the plan has ${planned}`;
    yield {
      slot: entry.slot,
      name: entry.name,
      field,
      shown,
      planned,
      message: `the ${fieldNoun(field)} is ${shown}; ${plan}`,
      press: pressOf(field, planned),
      ...(cause && { cause }),
      effect: faultEffect(field, channel.shown, entry),
    };
  }
}

function fieldNoun(field: EntryField): string {
  return field === 'receive' || field === 'transmit' ? `${field} frequency` : fieldWords(field);
}

function pressOf(field: EntryField, planned: string): string {
  switch (field) {
    case 'receive':
    case 'transmit':
      return planned === 'none' ? `leave ${field} unset` : `key in ${planned} as ${field}`;
    case 'name':
      return `enter the name ${planned}`;
    case 'tone':
    case 'receive-tone':
      return planned === 'none'
        ? `turn the ${fieldWords(field)} off`
        : `set ${fieldWords(field)} to ${planned}`;
    default:
      return `set ${fieldWords(field)} to ${planned}`;
  }
}

/** As it was typed, but for a direction, whose sign alone is easily overlooked. */
function shownText({ shown, typed }: EnteredChannel, field: EntryField): string {
  if (field === 'offset-direction') return shown.direction ?? '';
  return typed.get(field) ?? (field === 'offset' && shown.offsetHz === 0 ? 'none' : '');
}

function emptySlot(entry: Entry): Difference {
  return {
    slot: entry.slot,
    name: entry.name,
    field: 'slot',
    shown: 'empty',
    planned: entry.name,
    message: `the slot is empty; the plan has ${entry.name}`,
    press: `enter slot ${entry.slot} from the worksheet`,
    cause: { code: 'never-entered', text: 'it was never entered, or was cleared' },
    effect: { noticed: 'heard', text: 'the radio refuses the slot or skips it' },
  };
}

function strangeSlot(channel: EnteredChannel, hadOne: boolean, cause: Cause | undefined): Difference {
  const shown = [channel.typed.get('receive'), channel.typed.get('name')].filter(
    (text) => text !== undefined,
  );
  const likely =
    cause ?? (hadOne ? { code: 'not-cleared' as const, text: 'the last revision had this slot' } : undefined);
  return {
    slot: channel.slot,
    name: '',
    field: 'slot',
    shown: shown.join(' '),
    planned: 'nothing',
    message: `the slot holds ${shown.join(' ') || 'something'}; the plan has nothing there for this radio`,
    press: `clear slot ${channel.slot}`,
    ...(likely && { cause: likely }),
    effect: { noticed: 'unheard', text: 'whoever turns to it is on a channel that the group does not have' },
  };
}

function unreadOf(
  radio: Radio,
  entry: Entry,
  channel: EnteredChannel | undefined,
  unclear: readonly UnclearEntry[],
): UnreadSlot[] {
  if (channel?.empty) return [];
  const asked = askedFields(radio);
  if (channel === undefined) return [{ slot: entry.slot, name: entry.name, fields: asked, whole: true }];
  const fields = asked.filter(
    (field) =>
      !channel.typed.has(field) &&
      !(field === 'offset' && entry.direction === 'none') &&
      !(field === 'power' && entry.power === undefined) &&
      !(field === 'offset-direction' && channel.shown.direction !== undefined) &&
      !unclear.some((each) => each.slot === entry.slot && each.field === field),
  );
  const whole = channel.typed.size === 0;
  return fields.length === 0 ? [] : [{ slot: entry.slot, name: entry.name, fields, whole }];
}

/** What a menu asks for and a display can show, in the order of the menu. */
export function askedFields(radio: Radio): readonly EntryField[] {
  return radio.entryOrder.filter((field) => !(field === 'name' && radio.nameLength === 0));
}

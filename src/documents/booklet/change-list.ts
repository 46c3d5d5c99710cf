/** What changed since an older revision: channels, radios to enter again, and for whom the old card is dangerous. */
import type { Change, FieldChange, Revision } from '../../audit/compare-revisions.ts';
import { compareRevisions } from '../../audit/compare-revisions.ts';
import type { OldCard } from '../../audit/old-cards.ts';
import type { RadioReentry } from '../../audit/reentries.ts';
import { spellingIn } from '../change-sheets.ts';
import { fill, type Words } from '../words.ts';

export interface ChangeList {
  readonly revision: number;
  readonly check: string;
  /** Nothing that a card, a worksheet or a calendar rests on changed. */
  readonly same: boolean;
  readonly channels: readonly { readonly slot: number; readonly name: string; readonly what: string }[];
  /** Check-ins, ladders and members; what they are now stands in their own sections. */
  readonly others: readonly { readonly thing: string; readonly name: string; readonly what: string }[];
  readonly radios: readonly {
    readonly name: string;
    readonly holders: string;
    /** Slots to enter, and then those to clear. */
    readonly slots: readonly { readonly slot: number; readonly name: string; readonly what: string }[];
    readonly kept: string;
  }[];
  /** Everybody who holds a card of the older revision. */
  readonly cards: readonly {
    readonly name: string;
    /** Why it must not be used any more; empty where it is only out of date. */
    readonly dangers: string;
    /** Slots that still mean what they meant. */
    readonly right: string;
  }[];
}

export function changeList(old: Revision, now: Revision, words: Words): ChangeList {
  const comparison = compareRevisions(old, now, spellingIn(words));
  const { change, thing } = words;
  const kind = (each: Change) =>
    each.kind === 'changed' ? fieldNames(each.fields, words).join(', ') : change.kind[each.kind];
  const others = (what: string, changes: readonly Change[]) =>
    changes.map((each) => ({ thing: what, name: each.name, what: kind(each) }));
  return {
    revision: old.plan.revision,
    check: old.check,
    same: comparison.same,
    channels: comparison.channels.map((each) => ({
      slot: each.slot,
      name: each.name,
      what: each.kind === 'changed' ? withFigures(each.fields, words) : change.kind[each.kind],
    })),
    others: [
      ...others(change.thing['check-in'], comparison.checkIns),
      ...others(change.thing.ladder, comparison.ladders),
      ...others(thing.member, comparison.members),
    ],
    radios: comparison.radios
      .filter(({ enter, clear }) => enter.length + clear.length > 0)
      .map((radio) => radioOf(radio, now, words)),
    cards: comparison.cards.map((card) => cardOf(card, words)),
  };
}

function radioOf(
  { name, holders, enter, clear, kept }: RadioReentry,
  now: Revision,
  words: Words,
): ChangeList['radios'][number] {
  return {
    name,
    holders: holders.map((id) => now.plan.members.get(id)?.name ?? id).join(', '),
    slots: [
      ...enter.map((slot) => ({
        slot: slot.slot,
        name: slot.name,
        what:
          slot.kind === 'new'
            ? words.change.kind.new
            : slot.fields
                .map(({ field, was, is }) => wasAndIs(words.field[field], was, is, words))
                .join('; '),
      })),
      ...clear.map((slot) => ({ ...slot, what: words.change.clear })),
    ],
    kept: kept.join(', '),
  };
}

function cardOf({ name, dangers, validSlots }: OldCard, words: Words): ChangeList['cards'][number] {
  const said = dangers.map(({ kind, subject }) => fill(words.change.danger[kind], { subject }));
  return { name, dangers: [...new Set(said)].join('; '), right: validSlots.join(', ') };
}

function withFigures(fields: readonly FieldChange[], words: Words): string {
  return fields.map(({ field, was, is }) => wasAndIs(nameOf(field, words), was, is, words)).join('; ');
}

function wasAndIs(field: string, was: string, is: string, words: Words): string {
  const { change } = words;
  return fill(change.was, {
    field,
    was: spoken(was, words) || change.nothing,
    is: spoken(is, words) || change.nothing,
  });
}

/** A value as documents show it: figures after the point in groups, and no figure broken over two lines. */
function spoken(value: string, words: Words): string {
  // What stands in place of a frequency where nobody transmits.
  if (value === 'listen only') return words.listenOnly;
  return value.replace(/^(\d+\.\d{3})(\d+)$/, '$1 $2').replace(/(\d) (\d)/g, '$1\u00a0$2');
}

/** What changed, each kind of it once: of several rungs or licences only that they did. */
function fieldNames(fields: readonly FieldChange[], words: Words): readonly string[] {
  return [...new Set(fields.map(({ field }) => nameOf(field, words)))];
}

function nameOf(field: string, { change }: Words): string {
  const names: Readonly<Record<string, string>> = change.field;
  if (field.startsWith('rung ')) return change.field.rungs;
  if (field.endsWith(' licence')) return change.field.licences;
  if (field === 'roams') return change.field.places;
  return names[field.replaceAll(' ', '-')] ?? field;
}

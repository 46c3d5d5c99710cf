/** For each kind of radio what must be keyed in again when a plan moves on: slots with a changed value, new slots, slots to clear. */
import { type Entry, entriesOf } from '../consequences/entries.ts';
import type { EntryField } from '../plan/model.ts';
import { askedFields } from './compare-entries.ts';
import type { Revision, Spelling } from './compare-revisions.ts';

export interface SlotReentry {
  readonly slot: number;
  readonly name: string;
  readonly kind: 'new' | 'changed';
  /** What changes, in the order of the menu; of a new slot all. */
  readonly fields: readonly { readonly field: EntryField; readonly was: string; readonly is: string }[];
  /** Every field as it is to be. */
  readonly all: ReadonlyMap<EntryField, string>;
}

export interface RadioReentry {
  readonly radio: string;
  readonly name: string;
  /** Members who hold one now. */
  readonly holders: readonly string[];
  /** The old plan had no such radio, or another menu: all is entered anew. */
  readonly anew: boolean;
  readonly enter: readonly SlotReentry[];
  readonly clear: readonly { readonly slot: number; readonly name: string }[];
  /** Slots that stay as they are. */
  readonly kept: readonly number[];
}

export function reentries(old: Revision, now: Revision, spelling: Spelling): readonly RadioReentry[] {
  return [...now.plan.radios.values()].flatMap((radio): RadioReentry[] => {
    const entries = entriesOf(now.plan, now.consequences, radio);
    const before = old.plan.radios.get(radio.id);
    const had = new Map(
      (before === undefined ? [] : entriesOf(old.plan, old.consequences, before)).map((entry) => [
        entry.slot,
        entry,
      ]),
    );
    const fields = askedFields(radio);
    const enter: SlotReentry[] = [];
    const kept: number[] = [];
    for (const entry of entries) {
      const was = had.get(entry.slot);
      const changed = fields
        .map((field) => ({ field, was: said(was, field, spelling), is: said(entry, field, spelling) }))
        .filter((each) => was === undefined || each.was !== each.is);
      if (changed.length === 0) kept.push(entry.slot);
      else
        enter.push({
          slot: entry.slot,
          name: entry.name,
          kind: was === undefined ? 'new' : 'changed',
          fields: changed,
          all: new Map(fields.map((field) => [field, said(entry, field, spelling)])),
        });
    }
    const held = new Set(entries.map(({ slot }) => slot));
    const clear = [...had.values()]
      .filter(({ slot }) => !held.has(slot))
      .map(({ slot, name }) => ({ slot, name }));
    if (entries.length === 0 && clear.length === 0) return [];
    return [
      {
        radio: radio.id,
        name: radio.name,
        holders: now.consequences.holdersOf(radio.id),
        anew: had.size === 0,
        enter,
        clear,
        kept,
      },
    ];
  });
}

function said(entry: Entry | undefined, field: EntryField, { entry: say }: Spelling): string {
  return entry === undefined ? '' : say(entry, field);
}

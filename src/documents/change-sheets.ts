/**
 * What moves a group from one revision to the next on paper: for each kind of radio a worksheet with only the slots
 * to enter again, what they hold now beside what they are to hold; and a card that says what changed.
 */
import { askedFields } from '../audit/compare-entries.ts';
import type { Change, Revision, RevisionComparison, Spelling } from '../audit/compare-revisions.ts';
import type { CardSize, Plan } from '../plan/model.ts';
import { clock, daysText, megahertz, shift, toneText } from './figures.ts';
import type { Words } from './words.ts';
import { keyedValue } from './worksheets.ts';

interface ChangeHead {
  readonly title: string;
  readonly language: string;
  readonly paper: 'Letter' | 'A4';
  readonly oldRevision: number;
  readonly revision: number;
  readonly effective: string;
  readonly oldCheck: string;
  readonly check: string;
  readonly checkWords: string;
}

export interface ChangeWorksheet extends ChangeHead {
  readonly id: string;
  readonly radio: string;
  readonly holders: readonly string[];
  readonly slots: readonly {
    readonly number: number;
    readonly slot: number;
    readonly name: string;
    readonly isNew: boolean;
    readonly entries: readonly {
      readonly field: string;
      /** What the radio holds until now; empty in a new slot. */
      readonly was: string;
      readonly is: string;
      readonly differs: boolean;
    }[];
  }[];
  readonly clear: readonly { readonly slot: number; readonly name: string }[];
  readonly kept: readonly number[];
  readonly count: number;
}

interface NamedFrequency {
  readonly name: string;
  readonly receive: string;
}

export interface ChangeCard extends ChangeHead {
  readonly card: CardSize;
  readonly flip: Plan['cards']['flip'];
  readonly flipWords: string;
  /** Slots that lead elsewhere than on the old card. */
  readonly moved: readonly {
    readonly slot: number;
    readonly was: NamedFrequency;
    readonly is: NamedFrequency;
  }[];
  readonly gone: readonly { readonly slot: number; readonly name: string }[];
  /** Channels to enter again or anew, as a card shows them. */
  readonly channels: readonly {
    readonly slot: number;
    readonly name: string;
    readonly receive: string;
    readonly shift: string;
    readonly tone: string;
    readonly isNew: boolean;
  }[];
  readonly checkIns: readonly string[];
  readonly ladders: readonly string[];
  readonly keptSlots: readonly number[];
}

/** Changes as the documents of a language spell them. */
export function spellingIn(words: Words): Spelling {
  return {
    entry: (entry, field) => keyedValue(entry, field, words),
    clock: (time) => clock(time, words),
    days: (days) => daysText(days, words),
  };
}

export function changeWorksheets(
  old: Revision,
  now: Revision,
  { radios }: RevisionComparison,
  words: Words,
): readonly ChangeWorksheet[] {
  return radios
    .filter(({ enter, clear }) => enter.length + clear.length > 0)
    .map((radio): ChangeWorksheet => {
      const kind = now.plan.radios.get(radio.radio);
      const order = kind === undefined ? [] : askedFields(kind);
      return {
        ...headOf(old, now, words),
        id: radio.radio,
        radio: radio.name,
        holders: radio.holders.map((id) => now.plan.members.get(id)?.name ?? id),
        slots: radio.enter.map(({ slot, name, kind: how, fields, all }, index) => ({
          number: index + 1,
          slot,
          name,
          isNew: how === 'new',
          entries: order.map((field) => {
            const change = fields.find((each) => each.field === field);
            const is = all.get(field) ?? '';
            return {
              field: words.field[field],
              was: how === 'new' ? '' : (change?.was ?? is),
              is,
              differs: change !== undefined,
            };
          }),
        })),
        clear: radio.clear,
        kept: radio.kept,
        count: radio.enter.length,
      };
    });
}

export function changeCard(
  old: Revision,
  now: Revision,
  comparison: RevisionComparison,
  words: Words,
  card: CardSize,
): ChangeCard {
  const { channels } = now.consequences;
  const changed = new Set(comparison.channels.map(({ slot }) => slot));
  return {
    ...headOf(old, now, words),
    card,
    flip: now.plan.cards.flip,
    flipWords: words.flip[now.plan.cards.flip],
    moved: comparison.channels
      .filter(({ meansOther }) => meansOther)
      .map(({ slot }) => ({ slot, was: shown(old, slot), is: shown(now, slot) })),
    gone: comparison.channels.filter(({ kind }) => kind === 'gone').map(({ slot, name }) => ({ slot, name })),
    channels: comparison.channels.flatMap(({ slot, kind }) => {
      const on = channels.get(slot);
      if (on === undefined) return [];
      const listenOnly = on.transmitHz === undefined;
      return [
        {
          slot,
          name: on.name,
          receive: megahertz(on.receiveHz),
          shift: listenOnly ? words.listenOnly : shift(on),
          tone: toneText(on),
          isNew: kind === 'new',
        },
      ];
    }),
    checkIns: comparison.checkIns.map(whatChanged),
    ladders: comparison.ladders.map(({ name }) => name),
    keptSlots: [...channels.keys()].filter((slot) => !changed.has(slot)).toSorted((a, b) => a - b),
  };
}

function shown({ plan, consequences }: Revision, slot: number): NamedFrequency {
  const on = consequences.channels.get(slot);
  return {
    name: plan.channels.get(slot)?.name ?? '',
    receive: on === undefined ? '' : megahertz(on.receiveHz),
  };
}

/** The name, with its hour and its days where those are new; what else changed stands on the new card. */
function whatChanged({ name, fields }: Change): string {
  const is = fields.filter(({ field }) => field === 'at' || field === 'days').map(({ is: value }) => value);
  return is.length === 0 ? name : `${name} ${is.join(', ')}`;
}

function headOf(old: Revision, now: Revision, words: Words): ChangeHead {
  const { plan, check } = now;
  return {
    title: plan.title,
    language: words.language,
    paper: plan.cards.sheet === 'letter' ? 'Letter' : 'A4',
    oldRevision: old.plan.revision,
    revision: plan.revision,
    effective: plan.effective,
    oldCheck: old.check,
    check,
    checkWords: words.spelled(check),
  };
}

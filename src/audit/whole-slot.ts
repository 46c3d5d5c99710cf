/**
 * Slots that hold, whole, what the plan has in another: a run entered one slot off, two slots exchanged, one
 * channel entered twice. Found before single fields are looked at, since a dozen wrong fields are then one slip.
 */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import type { Cause } from './cause.ts';
import { matchField } from './match-field.ts';
import { type EnteredChannel, enteredFields } from './read-entries.ts';

/** Fields that say which channel it is; power and step are set to taste. */
const telling: readonly EntryField[] = enteredFields.filter((field) => field !== 'power' && field !== 'step');

/** By slot, whether or not the plan has that slot. */
export function wholeSlotCauses(
  channels: readonly EnteredChannel[],
  entries: readonly Entry[],
  radio: Radio,
): ReadonlyMap<number, Cause> {
  const own = new Map(entries.map((entry) => [entry.slot, entry]));
  const holds = new Map<number, readonly number[]>();
  for (const channel of channels) {
    const entry = own.get(channel.slot);
    if (channel.empty || channel.shown.receive === undefined) continue;
    if (entry !== undefined && isWhole(channel, entry, radio)) continue;
    const others = entries.filter((other) => other.slot !== channel.slot && isWhole(channel, other, radio));
    if (others.length > 0)
      holds.set(
        channel.slot,
        others.map(({ slot }) => slot),
      );
  }
  const causes = new Map<number, Cause>();
  for (const run of runs(channels, entries, holds)) {
    const [first = 0] = run.slots;
    const last = run.slots.at(-1) ?? first;
    const where = run.lower ? 'one slot lower' : 'one slot higher';
    for (const slot of run.slots)
      causes.set(slot, {
        code: 'slot-run',
        text: `slots ${first} to ${last} hold what the plan has ${where}`,
      });
  }
  const inRun = new Set(causes.keys());
  for (const [slot, others] of holds) {
    if (inRun.has(slot)) continue;
    const back = others.find((other) => holds.get(other)?.includes(slot) && !inRun.has(other));
    const wrong = own.get(slot);
    const channel = channels.find((each) => each.slot === slot);
    // One wrong field may turn a channel into its twin; then the field is the better story.
    const several =
      wrong === undefined ||
      channel === undefined ||
      telling.filter((field) => matchField(channel.shown, wrong, field, radio) === false).length > 1;
    if (back !== undefined)
      causes.set(slot, { code: 'slots-exchanged', text: `slots ${slot} and ${back} are exchanged` });
    else if (several)
      causes.set(slot, { code: 'other-slot', text: `it is what the plan has in slot ${others[0]}` });
  }
  return causes;
}

function isWhole(channel: EnteredChannel, entry: Entry, radio: Radio): boolean {
  return (
    matchField(channel.shown, entry, 'receive', radio) === true &&
    telling.every((field) => matchField(channel.shown, entry, field, radio) !== false)
  );
}

interface Run {
  readonly slots: readonly number[];
  /** The slots hold what belongs into the one before. */
  readonly lower: boolean;
}

/** Two or more slots in a row that each hold the channel of the next, or of the one before, by number or by the sheet's order. */
function* runs(
  channels: readonly EnteredChannel[],
  entries: readonly Entry[],
  holds: ReadonlyMap<number, readonly number[]>,
): Generator<Run> {
  const order = entries.map(({ slot }) => slot);
  const neighbours = (slot: number, by: 1 | -1): readonly number[] => {
    const at = order.indexOf(slot);
    const onSheet = at === -1 ? [] : [order[at + by]].filter((found) => found !== undefined);
    return [slot + by, ...onSheet];
  };
  for (const by of [-1, 1] as const) {
    let slots: number[] = [];
    const end = function* (): Generator<Run> {
      if (slots.length > 1) yield { slots, lower: by === -1 };
      slots = [];
    };
    for (const { slot } of channels) {
      if (holds.get(slot)?.some((held) => neighbours(slot, by).includes(held))) slots.push(slot);
      else yield* end();
    }
    yield* end();
  }
}

/**
 * What radios lack on channels that their holders need: one entry a channel and kind of lack. Where one kind of
 * radio lacks the same on several channels, it is the radio that is wrong or too little, and it is said once.
 */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { MisfitCode } from '../consequences/radio-fit.ts';
import { shortfalls } from '../consequences/shortfalls.ts';
import type { PlanPath } from '../findings/finding.ts';
import { groupBy } from './group-by.ts';
import { listNames } from './list-names.ts';
import type { RuleContext } from './rule.ts';

export interface Lack {
  readonly on: ChannelParticulars;
  /** Which radio lacks what, who needs the channel and for what: a sentence without its stop. */
  readonly text: string;
  /** Where the radio's own figure stands, if it is the radio that lacks something on several channels. */
  readonly radioAt?: PlanPath;
}

/** Keys of a radio that say what it can. */
const keys: Partial<Record<MisfitCode, string>> = {
  'receive-range': 'receives',
  'transmit-range': 'transmits',
  mode: 'modes',
  memory: 'memories',
};

export function lacks(context: RuleContext, code: MisfitCode): readonly Lack[] {
  const short = shortfalls(context).filter(({ cause }) => cause.code === code);
  const channels = [...groupBy(short, ({ on }) => on.slot).values()];
  const alike = groupBy(channels, (here) =>
    [...new Set(here.map(({ radio }) => radio.id))].toSorted().join(' '),
  );
  return [...alike.values()].flatMap((several) => {
    const [[{ radio }]] = several;
    const single = several.every((here) => here.every((each) => each.radio.id === radio.id));
    const key = keys[code];
    if (several.length === 1 || !single || key === undefined)
      return several.map((here): Lack => ({ on: here[0].on, text: textOf(here) }));
    const [first, ...others] = several;
    const also = others.map(([{ on }]) => `slot ${on.slot}, ${on.name}`);
    return [
      {
        on: first[0].on,
        text: `${textOf(first)}; the same goes for ${listNames(also)}`,
        radioAt: ['radios', radio.id, key],
      },
    ];
  });
}

type Shortfalls = readonly [ReturnType<typeof shortfalls>[number], ...ReturnType<typeof shortfalls>];

function textOf(here: Shortfalls): string {
  const [{ on, need, cause, radio: first }] = here;
  const who = [...groupBy(here, ({ radio }) => radio.id).values()].map((each) => {
    const [{ radio }] = each;
    return `${listNames(each.map(({ member }) => member.name))} (${radio.name})`;
  });
  return `${first.name} ${cause.text}; slot ${on.slot}, ${on.name}, is needed for ${need.because} by ${who.join(' and ')}`;
}

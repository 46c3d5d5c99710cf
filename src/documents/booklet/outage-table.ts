/** What is lost when one thing fails, or two, in words for a table. */
import type { Consequences } from '../../consequences/consequences.ts';
import type { Lost, Outage } from '../../consequences/outages.ts';
import { shortName } from '../../consequences/short-names.ts';
import type { Plan } from '../../plan/model.ts';
import { span } from '../figures.ts';
import { heldTogether } from '../held-together.ts';
import type { Words } from '../words.ts';

export interface OutageRow {
  readonly failed: string;
  readonly stops: string;
  readonly checkIns: string;
  /** Who is off the air or cut off, and when. */
  readonly members: string;
  /** Who loses a rung and has another. */
  readonly rungs: string;
}

/** Fewer people than this are named one by one. */
const fewest = 4;
/** Up to so many are named as those who are not meant. */
const mostOthers = 3;

export function outageRows(
  plan: Plan,
  consequences: Consequences,
  words: Words,
): { readonly single: readonly OutageRow[]; readonly double: readonly OutageRow[] } {
  const { single, double } = consequences.outages();
  const row = (outage: Outage) => outageRow(plan, outage, words);
  return { single: single.map(row), double: double.map(row) };
}

function outageRow(plan: Plan, outage: Outage, words: Words): OutageRow {
  const when = ({ afterMin }: Lost<unknown>) =>
    heldTogether(afterMin === 0 ? words.atOnce : words.after(span(afterMin)));
  const first = (id: string) => shortName(plan, id);
  const people = (ids: readonly string[]) => {
    const others = [...plan.members.keys()].filter((id) => !ids.includes(id));
    // Where most are meant it is shorter, and plainer, to say who is not.
    return ids.length < fewest || others.length > mostOthers
      ? ids.map(first).join(', ')
      : words.everybody(others.map(first));
  };
  const worse = outage.members.filter(({ standing }) => standing !== undefined);
  const byStanding = new Map<string, string[]>();
  for (const { member, standing } of worse) {
    if (standing === undefined) continue;
    const key = `${words.standing[standing.what]} ${when(standing)}`;
    byStanding.set(key, [...(byStanding.get(key) ?? []), member]);
  }
  return {
    failed: outage.failed.map(({ kind, name }) => `${name} (${words.thing[kind]})`).join(' + '),
    stops: outage.stopped.map((lost) => `${lost.what.name} ${when(lost)}`).join(', '),
    checkIns: outage.checkIns
      .map((lost) => `${plan.checkIns.get(lost.what)?.name ?? lost.what} ${when(lost)}`)
      .join(', '),
    members: [...byStanding].map(([standing, ids]) => `${standing}: ${people(ids)}`).join('; '),
    rungs: people(
      outage.members.filter(({ standing }) => standing === undefined).map(({ member }) => member),
    ),
  };
}

import type { Observation, PlanPath } from '../../findings/finding.ts';
import { nearest } from '../../findings/nearest.ts';
import type { Plan, Who } from '../../plan/model.ts';
import { commonPractice, rule } from '../rule.ts';

/** An id that leads nowhere makes the entry that uses it empty: a card without its channel, a ladder without its rung. */
export const referenceUnknown = rule({
  id: 'reference/unknown',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'An id or a slot number that leads to nothing in the plan.',
  why: 'Everything in a plan refers to everything else by id. One that leads nowhere drops a channel, a member or a rung from every card without a word.',
  mend: 'Correct the spelling, or add the entry that is meant.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gapp } # finding
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check({ plan }) {
    const ids = new Map<Kind, ReadonlySet<string>>();
    const idsOf = (kind: Kind): ReadonlySet<string> => {
      const known = ids.get(kind) ?? new Set(kind.has(plan));
      ids.set(kind, known);
      return known;
    };
    for (const { at, id, kinds } of unknown(plan, (kind, id) => idsOf(kind).has(id))) {
      const known = kinds.flatMap((kind) => [...idsOf(kind)]);
      const names = kinds.map((kind) => kind.noun).join(' or ');
      // A slot of nearly the same figures is no more likely than any other.
      const near = kinds.includes(slot) ? undefined : nearest(id, known);
      const observation: Observation = { at, message: `There is no ${names} \`${id}\` in this plan.` };
      yield near === undefined ? observation : { ...observation, suggestion: near };
    }
  },
});

interface Kind {
  readonly noun: string;
  has(plan: Plan): Iterable<string>;
}

const member: Kind = { noun: 'member', has: (plan) => plan.members.keys() };
const team: Kind = { noun: 'team', has: (plan) => plan.teams.keys() };
const place: Kind = { noun: 'place', has: (plan) => plan.places.keys() };
const radio: Kind = { noun: 'radio', has: (plan) => plan.radios.keys() };
const repeater: Kind = { noun: 'repeater', has: (plan) => plan.repeaters.keys() };
const mailbox: Kind = { noun: 'mailbox', has: (plan) => plan.mailboxes.keys() };
const digipeater: Kind = { noun: 'digipeater', has: (plan) => plan.digipeaters.keys() };
const asset: Kind = { noun: 'asset', has: (plan) => plan.assets.keys() };
const ladder: Kind = { noun: 'ladder', has: (plan) => plan.ladders.keys() };
const slot: Kind = { noun: 'channel in slot', has: (plan) => [...plan.channels.keys()].map(String) };

interface Reference {
  readonly at: PlanPath;
  readonly id: string;
  readonly kinds: readonly Kind[];
}

/** The references that lead nowhere. */
function unknown(plan: Plan, has: (kind: Kind, id: string) => boolean): readonly Reference[] {
  const found: Reference[] = [];
  const one = (at: PlanPath, id: string | number | undefined, ...kinds: Kind[]): void => {
    if (id === undefined || kinds.some((kind) => has(kind, String(id)))) return;
    found.push({ at, id: String(id), kinds });
  };
  const many = (at: PlanPath, ids: readonly string[], ...kinds: Kind[]): void => {
    for (const [index, id] of ids.entries())
      if (!kinds.some((kind) => has(kind, id))) found.push({ at: [...at, index], id, kinds });
  };
  const meant = (at: PlanPath, who: Who): void => {
    // A single id stands without a list around it; its place is then the entry itself.
    if (who === 'all') return;
    if (who.length === 1) one([...at, 0], who[0], team, member);
    else many(at, who, team, member);
  };
  one(['plan', 'coordinator'], plan.coordinator, member);
  for (const [index, profile] of plan.terrain.profiles.entries()) {
    one(['terrain', 'profiles', index, 'from'], profile.from, place);
    one(['terrain', 'profiles', index, 'to'], profile.to, place);
  }
  for (const { id, radios, at, roams } of plan.members.values()) {
    many(['members', id, 'radios'], radios, radio);
    one(['members', id, 'at'], at, place);
    many(['members', id, 'roams'], roams, place);
  }
  for (const [id, ids] of plan.teams) many(['teams', id], ids, member);
  const supports = [asset, repeater, digipeater, mailbox];
  for (const { id, dependsOn } of plan.assets.values())
    many(['assets', id, 'depends-on'], dependsOn, ...supports);
  for (const station of plan.repeaters.values()) {
    one(['repeaters', station.id, 'place'], station.place, place);
    many(['repeaters', station.id, 'depends-on'], station.dependsOn, ...supports);
  }
  for (const [section, stations] of [
    ['mailboxes', plan.mailboxes],
    ['digipeaters', plan.digipeaters],
  ] as const) {
    for (const station of stations.values()) {
      const at = ['packet', section, station.id];
      one([...at, 'place'], station.place, place);
      one([...at, 'channel'], station.channel, slot);
      many([...at, 'depends-on'], station.dependsOn, ...supports);
    }
  }
  for (const [index, route] of plan.routes.entries()) {
    one(['packet', 'routes', index, 'from'], route.from, place, member);
    one(['packet', 'routes', index, 'to'], route.to, mailbox);
    many(['packet', 'routes', index, 'through'], route.through, digipeater);
  }
  for (const channel of plan.channels.values()) {
    if (channel.kind === 'repeater') one(['channels', channel.slot, 'repeater'], channel.repeater, repeater);
  }
  for (const checkIn of plan.checkIns.values()) {
    const at = ['check-ins', checkIn.id];
    one([...at, 'channel'], checkIn.channel, slot);
    meant([...at, 'who'], checkIn.who);
    many([...at, 'control'], checkIn.control, member);
    one([...at, 'missed'], checkIn.missed, ladder);
  }
  for (const { id, who, reach, rungs } of plan.ladders.values()) {
    const at = ['fallbacks', id];
    meant([...at, 'who'], who);
    many([...at, 'reach'], reach, member);
    for (const [index, rung] of rungs.entries()) {
      const rungAt = [...at, 'rungs', index];
      one([...rungAt, 'channel'], rung.channel, slot);
      one([...rungAt, 'from'], rung.from, place);
      one([...rungAt, 'mailbox'], rung.mailbox, mailbox);
      many([...rungAt, 'through'], rung.through, digipeater);
      one([...rungAt, 'meet'], rung.meet, place);
      many([...rungAt, 'depends-on'], rung.dependsOn, ...supports);
    }
  }
  for (const [index, trial] of plan.trials.entries()) {
    const at = ['trials', index];
    one([...at, 'from'], trial.from, place, member);
    one([...at, 'to'], trial.to, place, member, repeater, digipeater, mailbox);
    one([...at, 'channel'], trial.channel, slot);
    one([...at, 'radio'], trial.radio, radio);
    one([...at, 'member'], trial.member, member);
  }
  return found;
}

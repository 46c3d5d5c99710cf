import { commonPractice, rule } from '../rule.ts';

/** A place nobody is at, goes to or transmits from only lengthens the booklet. */
export const placeUnused = rule({
  id: 'place/unused',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A place that nothing in the plan refers to.',
  why: 'Either the place has gone out of use, or somebody who is there has been forgotten.',
  mend: 'Remove it, or name it where it is used: by a member, a station, a rung, a route or a trial.',
  sources: [commonPractice],
  bad: `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  ford: { name: Slate Ford, at: "36.6033, -84.3817" } # finding`,
  good: `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }`,
  *check({ plan }) {
    const stations = [...plan.repeaters.values(), ...plan.mailboxes.values(), ...plan.digipeaters.values()];
    const used = new Set<string | undefined>([
      ...[...plan.members.values()].flatMap(({ at, roams }) => [at, ...roams]),
      ...stations.map(({ place }) => place),
      ...[...plan.ladders.values()].flatMap(({ rungs }) => rungs.flatMap(({ from, meet }) => [from, meet])),
      ...plan.routes.map(({ from }) => from),
      ...plan.terrain.profiles.flatMap(({ from, to }) => [from, to]),
      ...plan.trials.flatMap(({ from, to }) => [from, to]),
    ]);
    for (const { id, name } of plan.places.values()) {
      if (!used.has(id))
        yield {
          at: ['places', id],
          message: `Nothing in the plan refers to ${name}: nobody is there and nothing stands there.`,
        };
    }
  },
});

import { dependents } from '../../consequences/supports.ts';
import { commonPractice, rule } from '../rule.ts';

/** An asset on which nothing depends changes no outage. */
export const assetUnused = rule({
  id: 'asset/unused',
  severity: 'note',
  basis: 'practice',
  looksFor: 'An asset that nothing depends on.',
  why: 'Assets are in a plan so that their failure can be followed to the stations they take with them. Nothing hangs on this one, or it has been forgotten where it matters.',
  mend: 'Name it in `depends-on` of what it feeds, or remove it.',
  sources: [commonPractice],
  bad: `
assets:
  feeder: { name: Valley power feeder } # finding`,
  good: `
assets:
  feeder: { name: Valley power feeder }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [feeder] }`,
  *check({ plan }) {
    const used = new Set([
      ...[...dependents(plan)].flatMap(({ dependsOn }) => dependsOn),
      ...[...plan.ladders.values()].flatMap(({ rungs }) => rungs.flatMap(({ dependsOn }) => dependsOn)),
    ]);
    for (const { id, name } of plan.assets.values()) {
      if (!used.has(id)) yield { at: ['assets', id], message: `Nothing depends on ${name}.` };
    }
  },
});

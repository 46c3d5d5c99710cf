import { circles, dependents } from '../../consequences/supports.ts';
import { commonPractice, rule } from '../rule.ts';

/** Things that wait for each other never start. */
export const assetCircularDependency = rule({
  id: 'asset/circular-dependency',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'Assets or stations that depend on each other in a circle.',
  why: 'Each needs the next and the last needs the first, so none could ever have been started. What fails first cannot be told.',
  mend: 'Remove the dependency that is not one.',
  sources: [commonPractice],
  bad: `
assets:
  mains: { name: Mains, depends-on: [hut] } # finding
  hut: { name: Hut supply, depends-on: [mains] }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [hut] }`,
  good: `
assets:
  mains: { name: Mains }
  hut: { name: Hut supply, depends-on: [mains] }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [hut] }`,
  *check({ plan }) {
    const all = new Map([...dependents(plan)].map((dependent) => [dependent.id, dependent]));
    for (const circle of circles(all)) {
      const [first] = circle;
      if (!first) continue;
      const names = [...circle, first].map(({ name }) => name).join(' needs ');
      yield {
        at: [...first.path, 'depends-on'],
        message: `These depend on each other in a circle: ${names}.`,
      };
    }
  },
});

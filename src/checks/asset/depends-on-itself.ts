import { dependents } from '../../consequences/supports.ts';
import { commonPractice, rule } from '../rule.ts';

/** What rests on itself rests on nothing. */
export const assetDependsOnItself = rule({
  id: 'asset/depends-on-itself',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'An asset or a station that depends on itself.',
  why: 'A thing that needs itself could never have been switched on. Another id was meant.',
  mend: 'Write what it really depends on.',
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [gap] } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [] }`,
  *check({ plan }) {
    for (const { id, name, path, dependsOn } of dependents(plan)) {
      const index = dependsOn.indexOf(id);
      if (index >= 0) yield { at: [...path, 'depends-on', index], message: `${name} depends on itself.` };
    }
  },
});

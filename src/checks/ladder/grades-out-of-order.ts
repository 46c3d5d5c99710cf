import type { Grade } from '../../plan/model.ts';
import { commonPractice, rule } from '../rule.ts';

/** Rungs are tried from the top, whatever they are called. */
export const ladderGradesOutOfOrder = rule({
  id: 'ladder/grades-out-of-order',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A rung whose grade comes before the grade of the rung above it.',
  why: 'Members go down the ladder line by line. A grade that jumps back says that a line was put in the wrong place.',
  mend: 'Put the rungs in the order primary, alternate, contingency, emergency.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: emergency, meet: base, at: next full hour }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min } # finding`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan }) {
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { grade }] of rungs.entries()) {
        const above = rungs[index - 1]?.grade;
        if (above !== undefined && order.indexOf(grade) < order.indexOf(above))
          yield {
            at: ['fallbacks', id, 'rungs', index, 'grade'],
            message: `The ${grade} rung stands below the ${above} rung.`,
          };
      }
    }
  },
});

const order: readonly Grade[] = ['primary', 'alternate', 'contingency', 'emergency'];

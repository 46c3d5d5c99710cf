import { commonPractice, rule } from '../rule.ts';

/** When all radios are silent the card must still say what to do. */
export const ladderNoEmergencyRung = rule({
  id: 'ladder/no-emergency-rung',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A ladder without an emergency rung.',
  why: 'Batteries die, antennas break and hilltops burn. A last rung that needs no radio, a place and an hour or a runner, is what keeps people from searching for each other.',
  mend: 'Add a rung of grade emergency: `meet` with a place and `at` with an hour, or `other`.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first: # finding
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }`,
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
    for (const { id, name, rungs } of plan.ladders.values()) {
      if (!rungs.some(({ grade }) => grade === 'emergency'))
        yield {
          at: ['fallbacks', id],
          points: 'key',
          message: `${name} ends without an emergency rung: what to do when no radio is answered.`,
        };
    }
  },
});

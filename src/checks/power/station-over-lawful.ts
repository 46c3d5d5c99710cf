import { localRulesOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';
import { stationsOverLimit } from '../stations-over-limit.ts';

/** A station on a hill with gain reaches further than its figures look, and near some ranges the limit is lower. */
export const powerStationOverLawful = rule({
  id: 'power/station-over-lawful',
  severity: 'error',
  basis: 'law',
  looksFor:
    'A repeater, digipeater or mailbox whose power, with its antenna, is more than the rules allow where it stands.',
  why: 'Limits hold for the transmitter or for what the antenna radiates, and near borders and military ranges lower ones hold.',
  mend: 'Lower the power, or correct the figures of the antenna.',
  sources: [{ document: '47 CFR', section: '95.1767 and 97.313' }],
  bad: `
repeaters:
  gap: { name: Neighbours, call: WZZZ401, service: gmrs, output: 462.675, offset: 5, tone: 141.3, place: hill, power: 100 W } # finding`,
  good: `
repeaters:
  gap: { name: Neighbours, call: WZZZ401, service: gmrs, output: 462.675, offset: 5, tone: 141.3, place: hill, power: 50 W }`,
  *check(context) {
    yield* stationsOverLimit(context, (limit) => !localRulesOf(context.law, limit));
  },
});

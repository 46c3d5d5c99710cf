/** Two findings, the less serious first, and the more serious as the group keeps it, for the tests of the formats other programs read. */
import type { AcceptedFinding } from '../../src/findings/accepted-finding.ts';
import type { Finding } from '../../src/findings/finding.ts';

const place = { file: 'plans/my plan.yaml', line: 12, column: 7, endLine: 12, endColumn: 11 };

export const unused: Finding = {
  rule: 'repeater/unused',
  severity: 'note',
  basis: 'practice',
  message: 'Nobody uses it.',
  path: ['repeaters', 'gap'],
  place: { ...place, line: 3, endLine: 4 },
};

export const unusualOffset: Finding = {
  rule: 'offset/unusual',
  severity: 'warning',
  basis: 'band plan',
  message: 'Offset is 100%: of\r\nsomething, else.',
  path: ['repeaters', 'gap', 'offset'],
  place,
  source: { document: '47 CFR', section: '97.205' },
  suggestion: '-0.6',
};

export const keptOffset: AcceptedFinding = {
  finding: unusualOffset,
  because: 'Coordinated so',
  until: '2027-06-01',
  acceptedAt: { ...place, line: 40, endLine: 40 },
};

import { expect, test } from 'vitest';
import { findingsJson } from '../../src/findings/findings-json.ts';
import { keptOffset, unused, unusualOffset } from './machine-formats.ts';

const checked = {
  plan: 'plans/my plan.yaml',
  revision: 3,
  check: 'K7M2',
  findings: [unused, unusualOffset],
  accepted: [],
};

test('one plan is listed in the documented shape, most serious first', () => {
  expect(JSON.parse(JSON.stringify(findingsJson([checked])))).toEqual({
    plan: 'plans/my plan.yaml',
    revision: 3,
    check: 'K7M2',
    findings: [
      {
        rule: 'offset/unusual',
        severity: 'warning',
        basis: 'band plan',
        message: 'Offset is 100%: of\r\nsomething, else.',
        file: 'plans/my plan.yaml',
        line: 12,
        column: 7,
        path: 'repeaters.gap.offset',
        source: { document: '47 CFR', section: '97.205' },
        suggestion: '-0.6',
      },
      {
        rule: 'repeater/unused',
        severity: 'note',
        basis: 'practice',
        message: 'Nobody uses it.',
        file: 'plans/my plan.yaml',
        line: 3,
        column: 7,
        path: 'repeaters.gap',
        source: null,
      },
    ],
    counts: { error: 0, warning: 1, note: 1 },
    accepted: [],
  });
});

test('several plans stand in a list, and a plan that could not be read has no revision', () => {
  const unread = { plan: 'b.yaml', revision: null, check: null, findings: [], accepted: [] };
  const json = findingsJson([checked, unread]);
  expect(json).toMatchObject({ plans: [{ plan: 'plans/my plan.yaml' }, { plan: 'b.yaml', revision: null }] });
  expect(findingsJson([])).toEqual({ plans: [] });
});

test('what is not listed is counted all the same', () => {
  expect(findingsJson([checked], ({ severity }) => severity === 'error')).toMatchObject({
    findings: [],
    counts: { error: 0, warning: 1, note: 1 },
  });
});

test('what the group keeps stands apart, with its reason and its last day, and counts nowhere', () => {
  const [first] = [findingsJson([{ ...checked, findings: [], accepted: [keptOffset] }])];
  expect(JSON.parse(JSON.stringify(first))).toMatchObject({
    findings: [],
    counts: { error: 0, warning: 0, note: 0 },
    accepted: [
      {
        rule: 'offset/unusual',
        path: 'repeaters.gap.offset',
        because: 'Coordinated so',
        until: '2027-06-01',
      },
    ],
  });
});

import { expect, test } from 'vitest';
import { sarif } from '../../src/findings/sarif.ts';
import { sarifProperties } from '../sources/sarif-properties.ts';
import { keptOffset, unused, unusualOffset } from './machine-formats.ts';

const rules = ['repeater/unused', 'offset/unusual', 'tone/not-standard'].map((id) => ({
  id,
  severity: 'note' as const,
  looksFor: 'It.',
  why: 'Because.',
  mend: 'So.',
}));

// SARIF version 2.1.0, OASIS standard of 27 March 2020: sections 3.13 (log), 3.14.17 (columnKind), 3.19 and
// 3.49 (rules), 3.27.5 to 3.27.12 (results), 3.4.3 and 3.4.4 (URIs), 3.30 (regions).
test('the log names its version, its tool and how columns are counted', () => {
  expect(sarif([], rules, '0.1.0')).toMatchObject({
    version: '2.1.0',
    runs: [
      {
        columnKind: 'utf16CodeUnits',
        tool: { driver: { name: 'readback', version: '0.1.0', rules: [] } },
        results: [],
      },
    ],
  });
});

test('each result points at its rule by index and at its place by a relative, escaped URI', () => {
  const log = JSON.parse(JSON.stringify(sarif([unused, unusualOffset], rules, '0.1.0')));
  const run = log.runs[0];
  for (const result of run.results) expect(run.tool.driver.rules[result.ruleIndex].id).toBe(result.ruleId);
  expect(run.tool.driver.rules).toHaveLength(2);
  expect(run.results[0]).toMatchObject({
    ruleId: 'offset/unusual',
    level: 'warning',
    message: { text: 'Offset is 100%: of␍␊something, else. Source: 47 CFR, 97.205. Write instead: -0.6' },
    locations: [
      {
        physicalLocation: {
          artifactLocation: { uri: 'plans/my%20plan.yaml', uriBaseId: '%SRCROOT%' },
          region: { startLine: 12, startColumn: 7, endLine: 12, endColumn: 11 },
        },
      },
    ],
  });
});

test('a finding is known again when its line moves, and two of one rule and path are told apart', () => {
  const moved = { ...unusualOffset, place: { ...unusualOffset.place, line: 99, endLine: 99 } };
  const prints = (findings: Parameters<typeof sarif>[0]) =>
    JSON.parse(JSON.stringify(sarif(findings, rules, '1'))).runs[0].results.map(
      (result: { partialFingerprints: Record<string, string> }) => result.partialFingerprints['rulePath/v1'],
    );
  expect(prints([moved])).toEqual(prints([unusualOffset]));
  expect(new Set(prints([moved, unusualOffset])).size).toBe(2);
});

test('an absolute or hostile file name still makes a URI', () => {
  const uri = (file: string) =>
    JSON.parse(JSON.stringify(sarif([{ ...unused, place: { ...unused.place, file } }], rules, '1'))).runs[0]
      .results[0].locations[0].physicalLocation.artifactLocation.uri;
  expect(uri('/home/x/a b.yaml')).toBe('file:///home/x/a%20b.yaml');
  expect(uri('\ud83d#?.yaml')).toBe('%EF%BF%BD%23%3F.yaml');
});

// Sections 3.27.23 and 3.35 (suppressions; either all results have the list or none), 3.20 (invocations); the
// numbers are from memory.
test('what the group keeps is a suppressed result, with the reason and the place of the acceptance', () => {
  const [run] = JSON.parse(JSON.stringify(sarif([unused], rules, '1', { accepted: [keptOffset] }))).runs;
  expect(run.results).toMatchObject([
    {
      ruleId: 'offset/unusual',
      suppressions: [
        {
          kind: 'inSource',
          status: 'accepted',
          justification: 'Coordinated so',
          location: { physicalLocation: { region: { startLine: 40 } } },
          properties: { until: '2027-06-01' },
        },
      ],
    },
    { ruleId: 'repeater/unused', suppressions: [] },
  ]);
  expect(run.tool.driver.rules.map(({ id }: { id: string }) => id)).toEqual([
    'offset/unusual',
    'repeater/unused',
  ]);
  expect(run).not.toHaveProperty('invocations');
});

test('a plan that could not be read makes the run no success', () => {
  const unread = [{ plan: 'my plans/gone.yaml', why: 'There is no file my plans/gone.yaml.' }];
  const [run] = JSON.parse(JSON.stringify(sarif([unused], rules, '1', { unread }))).runs;
  expect(run.invocations).toMatchObject([
    {
      executionSuccessful: false,
      toolExecutionNotifications: [
        {
          level: 'error',
          message: { text: 'There is no file my plans/gone.yaml.' },
          locations: [{ physicalLocation: { artifactLocation: { uri: 'my%20plans/gone.yaml' } } }],
        },
      ],
    },
  ]);
});

/** Objects inside objects: the property, and the object of the format it holds (or a list of them). */
const holds: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  log: { runs: 'run' },
  run: { tool: 'tool', results: 'result', invocations: 'invocation' },
  tool: { driver: 'toolComponent' },
  toolComponent: { rules: 'reportingDescriptor' },
  reportingDescriptor: {
    shortDescription: 'multiformatMessageString',
    fullDescription: 'multiformatMessageString',
    help: 'multiformatMessageString',
    defaultConfiguration: 'reportingConfiguration',
  },
  result: { message: 'message', locations: 'location', suppressions: 'suppression' },
  suppression: { location: 'location' },
  invocation: { toolExecutionNotifications: 'notification' },
  notification: { message: 'message', locations: 'location' },
  location: { physicalLocation: 'physicalLocation', logicalLocations: 'logicalLocation' },
  physicalLocation: { artifactLocation: 'artifactLocation', region: 'region' },
};

function strangeProperties(value: object, kind: string): readonly string[] {
  const [may = '', must = ''] = sarifProperties[kind] ?? [];
  const allowed = new Set(may.split(' '));
  const missing = must.split(' ').filter((name) => name !== '' && !(name in value));
  return [
    ...missing.map((name) => `${kind} without ${name}`),
    ...Object.entries(value).flatMap(([name, inner]) => {
      if (!allowed.has(name)) return [`${kind}.${name}`];
      const inside = holds[kind]?.[name];
      return inside === undefined
        ? []
        : [inner].flat().flatMap((each: object) => strangeProperties(each, inside));
    }),
  ];
}

test('every object has only the properties that the published schema gives it, and those it must have', () => {
  const extras = {
    accepted: [keptOffset],
    unread: [{ plan: 'gone.yaml', why: 'There is no file gone.yaml.' }],
  };
  const log = JSON.parse(JSON.stringify(sarif([unused, unusualOffset], rules, '0.1.0', extras)));
  expect(strangeProperties(log, 'log')).toEqual([]);
  expect(strangeProperties({ ...log, plan: 'x' }, 'log')).toEqual(['log.plan']);
  delete log.runs[0].results[0].message;
  expect(strangeProperties(log, 'log')).toEqual(['result without message']);
});

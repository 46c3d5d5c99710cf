import { expect, test } from 'vitest';
import { sarif } from '../../src/findings/sarif.ts';
import { unused, unusualOffset } from './machine-formats.ts';

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

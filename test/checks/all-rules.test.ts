import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { allRules } from '../../src/checks/all-rules.ts';
import { examine } from '../../src/pipeline.ts';
import { examplePlan, markedLines } from './example-plan.ts';
import { exampleWorld } from './example-world.ts';

const folder = new URL('../../src/checks/', import.meta.url);
const ruleFiles = readdirSync(folder, { withFileTypes: true, recursive: true })
  .filter(
    (entry) => entry.isFile() && entry.parentPath.replace(/\/$/, '') !== folder.pathname.replace(/\/$/, ''),
  )
  .map((entry) => `${entry.parentPath.split('/').filter(Boolean).at(-1)}/${entry.name.replace(/\.ts$/, '')}`)
  .sort();

test('every rule file is in the list, and every rule of the list is the file its id names', () => {
  expect(allRules.map((rule) => rule.id)).toEqual(ruleFiles);
});

describe.each(allRules)('$id', (rule) => {
  test('its example of wrong is found on exactly the marked lines', async () => {
    const text = examplePlan(rule.bad);
    const { findings, whole } = await examine(text, 'bad.yaml', exampleWorld);
    expect(
      whole,
      findings.map((finding) => `${finding.place.line}: ${finding.message}`).join('\n'),
    ).toBeDefined();
    const lines = findings.filter((finding) => finding.rule === rule.id).map((finding) => finding.place.line);
    expect([...new Set(lines)].sort((a, b) => a - b)).toEqual(markedLines(text));
    expect(lines.length).toBeGreaterThan(0);
  });

  test('its example of right is not found', async () => {
    const { findings, whole } = await examine(examplePlan(rule.good), 'good.yaml', exampleWorld);
    expect(
      whole,
      findings.map((finding) => `${finding.place.line}: ${finding.message}`).join('\n'),
    ).toBeDefined();
    expect(findings.filter((finding) => finding.rule === rule.id).map((finding) => finding.message)).toEqual(
      [],
    );
  });

  test('it explains itself in whole sentences and names its source', () => {
    for (const words of [rule.looksFor, rule.why, rule.mend])
      expect(words).toMatch(/^[A-Z"`].*[.!?]["`)]?$/s);
    expect(rule.sources.every((source) => source.document.length > 3)).toBe(true);
    if (rule.basis === 'law') expect(rule.sources[0].document).not.toBe('common practice');
  });
});

test('the smallest plan, from which examples are made, has no findings', async () => {
  const { findings } = await examine(examplePlan(''), 'smallest.yaml', exampleWorld);
  expect(findings.map((finding) => `${finding.rule} ${finding.message}`)).toEqual([]);
});

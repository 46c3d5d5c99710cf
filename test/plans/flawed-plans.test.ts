import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { examine } from '../../src/pipeline.ts';

const folder = new URL('./', import.meta.url);
const plans = readdirSync(folder).filter(
  (name) => name.endsWith('.yaml') && /^readback: 1$/m.test(readFileSync(new URL(name, folder), 'utf8')),
);

const world = {
  today: '2026-11-25',
  read: async (path: string) => readFileSync(new URL(path, folder)),
};

/** `line rule` for every mark `# finding: topic/what, topic/what`. */
function marks(text: string): string[] {
  return text.split('\n').flatMap((line, index) => {
    const rules = /# finding: (.+)$/.exec(line)?.[1];
    return rules === undefined ? [] : rules.split(',').map((rule) => `${index + 1} ${rule.trim()}`);
  });
}

describe('in a flawed plan exactly the marked findings are made, on the marked lines', () => {
  expect(plans.length).toBeGreaterThan(5);

  test.each(plans)('%s', async (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const { findings } = await examine(text, name, world);
    const found = findings.map(({ place, rule }) => `${place.line} ${rule}`);
    const byLine = (a: string, b: string) =>
      Number.parseInt(a, 10) - Number.parseInt(b, 10) || (a < b ? -1 : a > b ? 1 : 0);
    expect(marks(text).length).toBeGreaterThan(0);
    expect(found.sort(byLine)).toEqual(marks(text).sort(byLine));
  });
});

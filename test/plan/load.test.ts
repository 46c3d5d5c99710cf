import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { codeFrame } from '../../src/findings/code-frame.ts';
import { Refusal } from '../../src/findings/refusal.ts';
import { decode } from '../../src/plan/decode.ts';
import { load } from '../../src/plan/load.ts';
import { starterPlan } from '../../src/plan/starter-plan.ts';
import { everyKey } from './every-key.ts';
import { onlySaid, places, said, slip } from './slip.ts';

const demo = readFileSync(new URL('../../plans/hickory-gap.yaml', import.meta.url), 'utf8');

describe('a key that the language does not have', () => {
  test.each([
    ['    tone: 100.0', '    tonne: 100.0', 'tone'],
    ['output-tone', 'output_tone', 'output-tone'],
    ['revision', 'revison', 'revision'],
    ['check-ins:', 'checkins:', 'check-ins'],
    ['fallbacks:', 'Fallbacks:', 'fallbacks'],
    ['feed-loss', 'feedloss', 'feed-loss'],
  ])('%j written %j is answered with the nearest one', (piece, written, near) => {
    const unknown = said(slip(piece, written)).find(({ rule }) => rule === 'plan/unknown-key');
    expect(unknown).toMatchObject({ suggestion: near, marked: written.trim().split(':')[0] });
  });

  test('like none that it has is answered with all of them', () => {
    expect(onlySaid(slip('  sheet: a4', '  quux: a4'))).toMatchObject({
      message:
        '`quux` is not a key that `cards` can have. It can have: size, sheet, flip, notes, qr, back-shift.',
      suggestion: undefined,
      marked: 'quux',
    });
  });
});

describe('where a finding points', () => {
  test('a missing entry is pointed at by what should have it', () => {
    expect(onlySaid(slip('    output: 146.940\n', ''))).toMatchObject({
      rule: 'plan/missing-entry',
      message: '`repeaters.gap` has no `output`: a frequency in MHz, such as 146.940.',
      marked: 'gap',
    });
  });

  test('a missing name is not explained as a name', () => {
    expect(
      onlySaid(slip('name: Gap repeater', 'call: W4XGQ').replace('    call: w4xgp\n', '')),
    ).toMatchObject({
      message: '`repeaters.gap` has no `name`.',
    });
  });

  test('a missing section by the beginning of the file', () => {
    expect(onlySaid(everyKey.replace('readback: 1\n', ''))).toMatchObject({ at: 'readback' });
    expect(places(everyKey.replace('readback: 1\n', ''))).toEqual(['1:1']);
  });

  test('an item of a list by itself', () => {
    expect(onlySaid(slip('certified: [amateur, gmrs]', 'certified: [amateur, GMRS!]'))).toMatchObject({
      at: 'radios.handheld.certified.1',
      marked: 'GMRS!',
    });
  });

  test('columns count UTF-16 units, and carets stand under what is seen, however wide its letters', () => {
    const text = slip('{ name: GAP, use: First call', '{ name: 山の谷🐻, tonne: 5');
    const { findings, text: source } = load(text, 'plan.yaml');
    const [finding] = findings;
    if (finding === undefined) throw new Error('nothing is found');
    // `  1:  { name: ` are 14 units, the name 5 (the mountain takes two), the comma and blank 2 more.
    expect(finding.place.column).toBe(22);
    const { line: shown, margin, carets } = codeFrame(source, finding.place, 100, stringWidth);
    // East Asian wide letters and the pictograph take two columns each (Unicode Standard Annex 11).
    const columns = [...shown.slice(0, shown.indexOf('tonne'))].reduce(
      (sum, letter) => sum + (/[山の谷🐻]/u.test(letter) ? 2 : 1),
      0,
    );
    expect(margin).toHaveLength(columns);
    expect(carets).toBe('^^^^^');
  });
});

test('the plan that a group starts from has nothing wrong with its writing, nor has the demonstration', () => {
  expect(said(starterPlan)).toEqual([]);
  expect(said(demo)).toEqual([]);
});

describe('whatever is read', () => {
  // Only a refusal may leave the reading of a plan, and every finding stands on a line of the file.
  const examine = (bytes: Uint8Array): void => {
    let text: string;
    try {
      text = decode(bytes, 'plan.yaml');
    } catch (error) {
      if (error instanceof Refusal) return;
      throw error;
    }
    const { findings, plan } = load(text, 'plan.yaml');
    const lines = text.split('\n').length;
    expect(plan === undefined).toBe(findings.length > 0);
    for (const { place, message } of findings) {
      expect(place.line).toBeGreaterThanOrEqual(1);
      expect(place.line).toBeLessThanOrEqual(lines);
      expect(place.endLine).toBeLessThanOrEqual(lines);
      expect(place.column).toBeGreaterThanOrEqual(1);
      expect(place.column).toBeLessThanOrEqual((text.split('\n')[place.line - 1] ?? '').length + 1);
      expect(message).toMatch(/[.:]$/s);
      expect(message).not.toMatch(/undefined|\[object|NaN/);
    }
  };
  const bytesOf = (text: string) => new TextEncoder().encode(text);

  test('any bytes', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), examine), { numRuns: 150 });
  });

  test('any text made of the marks of YAML', () => {
    const mark = fc.constantFrom(
      ...[
        '- ',
        '? ',
        ': ',
        ':',
        '\n',
        '\n  ',
        '\n\t',
        '[',
        ']',
        '{',
        '}',
        ',',
        '#',
        '&a ',
        '*a',
        '!',
        '!!map ',
        '|',
        '>\n',
      ],
      ...[
        '"',
        "'",
        '%',
        '@',
        '`',
        '---\n',
        '...\n',
        'a',
        'plan',
        'readback: 1\n',
        '1',
        '~',
        '\r\n',
        '\\',
        '<<: ',
        '\u0085',
        '\u2028',
      ],
    );
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 40 }), (marks) => examine(bytesOf(marks.join('')))),
      { numRuns: 500 },
    );
  });

  test('the demonstration with stretches cut out, doubled, moved or overwritten', () => {
    const stretch = fc.record({
      from: fc.nat({ max: demo.length }),
      length: fc.nat({ max: 60 }),
      to: fc.nat({ max: demo.length }),
      how: fc.constantFrom('cut', 'double', 'move', 'noise'),
      noise: fc.string({ maxLength: 8, unit: 'binary' }),
    });
    fc.assert(
      fc.property(fc.array(stretch, { minLength: 1, maxLength: 4 }), (changes) => {
        let text = demo;
        for (const { from, length, to, how, noise } of changes) {
          const piece = text.slice(from, from + length);
          const rest = text.slice(0, from) + text.slice(from + length);
          if (how === 'cut') text = rest;
          else if (how === 'noise') text = text.slice(0, from) + noise + text.slice(from + length);
          else if (how === 'double') text = text.slice(0, to) + piece + text.slice(to);
          else text = rest.slice(0, to) + piece + rest.slice(to);
        }
        examine(bytesOf(text));
      }),
      { numRuns: 100 },
    );
  });

  test('the demonstration with any one value replaced by another of any kind', () => {
    const values = [...demo.matchAll(/(?<=: )[^\s,[\]{}#]+/g)];
    const strange = fc.constantFrom(
      '~',
      '[]',
      '{}',
      '-1',
      '1e999',
      '""',
      '" "',
      'true',
      '[[[1]]]',
      '{a: 1}',
      '0x0',
      '.inf',
      '-0',
      '2026-13-45',
      '"\\u0000"',
      'a'.repeat(500),
    );
    fc.assert(
      fc.property(fc.nat({ max: values.length - 1 }), strange, (index, written) => {
        const value = values[index];
        if (value?.index === undefined) return;
        examine(bytesOf(demo.slice(0, value.index) + written + demo.slice(value.index + value[0].length)));
      }),
      { numRuns: 150 },
    );
  });
});

test('the demo plan uses every section of the language', () => {
  const schema: { properties: Record<string, unknown> } = JSON.parse(
    readFileSync(new URL('../../src/plan/plan.schema.json', import.meta.url), 'utf8'),
  );
  const used = [...demo.matchAll(/^([a-z-]+):/gm)].map(([, section]) => section);
  expect(used.toSorted()).toEqual(Object.keys(schema.properties).toSorted());
});

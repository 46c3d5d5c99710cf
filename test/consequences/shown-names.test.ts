import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shownNames } from '../../src/consequences/shown-names.ts';
import { example } from './example.ts';

async function shown(length: number, names: readonly string[]): Promise<readonly string[]> {
  const channels = names
    .map((name, index) => `  ${index + 1}: { name: ${JSON.stringify(name)}, simplex: 146.55 }`)
    .join('\n');
  const { plan } = await example(
    `channels:\n${channels}\nradios:\n  handheld: { name: H, receives: [136-174], memories: 1-128, name-length: ${length} }`,
  );
  const radio = plan.radios.get('handheld');
  if (!radio) throw new Error('no radio');
  return [...shownNames(plan, radio, [...plan.channels.keys()]).values()]
    .toSorted((a, b) => a.slot - b.slot)
    .map((name) => name.shown);
}

test('a name that fits is shown as it is', async () => {
  expect(await shown(7, ['GAP', 'SIMP 1'])).toEqual(['GAP', 'SIMP 1']);
});

test('names that a plain cut would make one stay two', async () => {
  const [east, west] = await shown(6, ['TRAIL EAST', 'TRAIL WEST']);
  expect(east).not.toBe(west);
});

test('a longer name never takes the form of a shorter one', async () => {
  const [longer, shorter] = await shown(5, ['TRAIL EAST', 'TRAIL']);
  expect(shorter).toBe('TRAIL');
  expect(longer).not.toBe('TRAIL');
});

test('a radio that shows no names shows none', async () => {
  expect(await shown(0, ['GAP'])).toEqual(['']);
});

test('whatever the names, none is longer than the display, and different names stay different where they can', async () => {
  const name = fc.stringMatching(/^[A-Z][A-Z0-9 ]{2,10}[A-Z0-9]$/);
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(name, { minLength: 2, maxLength: 8 }),
      fc.integer({ min: 4, max: 8 }),
      async (names, length) => {
        const forms = await shown(length, names);
        expect(forms.every((form) => form.length <= length)).toBe(true);
        // Where all names differ in their first letters a plain cut is enough.
        if (new Set(names.map((each) => each.slice(0, 3))).size === names.length)
          expect(new Set(forms).size).toBe(names.length);
      },
    ),
    { numRuns: 60 },
  );
});

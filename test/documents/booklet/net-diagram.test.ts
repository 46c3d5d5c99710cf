import { expect, test } from 'vitest';
import { netDiagram } from '../../../src/documents/booklet/net-diagram.ts';
import { demoPlan, subjectOf } from '../press.ts';

const withGuests = (count: number) =>
  demoPlan
    .replace(
      /^teams:/m,
      `${Array.from({ length: count }, (_, index) => `  guest-${index}: { name: Guest ${index}, radios: [murs-handheld], at: schoolhouse }\n`).join('')}\nteams:`,
    )
    .replace(
      'who: [juno]',
      `who: [juno, ${Array.from({ length: count }, (_, index) => `guest-${index}`).join(', ')}]`,
    );

async function heightMm(guests: number): Promise<number | undefined> {
  const { plan, consequences } = await subjectOf(withGuests(guests));
  return netDiagram(plan, consequences, '')?.heightMm;
}

test('the rows of a large group move together, so that the picture stays on its page', async () => {
  // A Letter page of 279.4 mm less margins, heading and the line below the picture.
  expect(await heightMm(10)).toBeGreaterThan(100);
  expect(await heightMm(45)).toBeLessThan(215);
});

test('a group whose rows would touch has no picture, and its booklet is printed all the same', async () => {
  expect(await heightMm(120)).toBeUndefined();
});

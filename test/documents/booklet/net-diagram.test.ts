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

test('a dotted line goes to a channel that a member may only listen to', async () => {
  const dotted = async (text: string) => {
    const { plan, consequences } = await subjectOf(text);
    const shapes = netDiagram(plan, consequences, '')?.shapes ?? [];
    return shapes.filter((shape) => shape.kind === 'line' && shape.dashMm?.[0] === 0.4).length;
  };
  expect(await dotted(demoPlan)).toBe(0);
  // The three channels of the ladder of Hollis, who has lost her licence.
  expect(await dotted(demoPlan.replace(/licences: \{[^\n]*KX4XHG[^\n]*\n +/, ''))).toBe(3);
});

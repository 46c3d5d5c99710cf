import { expect, test } from 'vitest';
import { netDiagram } from '../../../src/documents/booklet/net-diagram.ts';
import { demoPlan, subjectOf } from '../press.ts';
import { equalWidths } from '../print/equal-widths.ts';

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
  return netDiagram(plan, consequences, '', equalWidths)?.heightMm;
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
    const shapes = netDiagram(plan, consequences, '', equalWidths)?.shapes ?? [];
    return shapes.filter((shape) => shape.kind === 'line' && shape.dashMm?.[0] === 0.4).length;
  };
  expect(await dotted(demoPlan)).toBe(0);
  // The three channels of the ladder of Hollis, who has lost her licence.
  expect(await dotted(demoPlan.replace(/licences: \{[^\n]*KX4XHG[^\n]*\n +/, ''))).toBe(3);
});

test('names stand whole, in lines that their room holds, and no two alike', async () => {
  const long = (index: number) => `Maximiliana Wolfeschlegelstein-Featherstonehaugh ${index}`;
  let named = 0;
  const text = demoPlan.replaceAll(/(?<=^ {4}name: )[A-Z][a-z]+ [A-Z][a-z]+$/gm, () => {
    named += 1;
    return long(named);
  });
  expect(named).toBeGreaterThan(4);
  const { plan, consequences } = await subjectOf(text);
  const shapes = netDiagram(plan, consequences, '', equalWidths)?.shapes ?? [];
  const words = shapes.flatMap((shape) => (shape.kind === 'words' ? [shape] : []));
  expect(words.length).toBeGreaterThan(20);
  // Letters of half of 9 pt; 44 mm are 124.7 pt.
  for (const { text: line } of words) expect(line.length * 4.5, line).toBeLessThanOrEqual(124.8);
  const inRows = words.filter(({ x }) => x === 136).toSorted((a, b) => a.y - b.y);
  const read = inRows
    .map((line) => line.text)
    .join(' ')
    .replaceAll('- ', '-');
  for (let index = 1; index <= named; index += 1) expect(read).toContain(long(index));
  // Lines of 9 pt are no nearer than they are high.
  const steps = inRows.slice(1).map((line, index) => line.y - (inRows[index]?.y ?? 0));
  expect(Math.min(...steps)).toBeGreaterThanOrEqual((9 * 25.4) / 72);
});

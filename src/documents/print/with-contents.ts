/** Fills the tables of contents of a document with the sections that follow from it. */
import type { Block, Heading } from './content.ts';
import { plainText } from './lay-text.ts';

export function withContents(blocks: readonly Block[]): Block[] {
  const entries = [...sectionsOf(blocks)];
  const fill = (list: readonly Block[]): Block[] =>
    list.map((block) => {
      if (block.kind === 'contents') return { ...block, entries };
      return block.kind === 'section' || block.kind === 'keep' || block.kind === 'panel'
        ? { ...block, blocks: fill(block.blocks) }
        : block;
    });
  return fill(blocks);
}

function* sectionsOf(blocks: readonly Block[]): Generator<{ id: string; text: string }> {
  for (const block of blocks) {
    if (block.kind !== 'section') continue;
    const heading = block.blocks.find((inner): inner is Heading => inner.kind === 'heading');
    if (block.id !== undefined && heading !== undefined)
      yield { id: block.id, text: plainText(heading.text) };
    yield* sectionsOf(block.blocks);
  }
}

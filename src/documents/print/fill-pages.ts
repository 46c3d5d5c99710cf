/** Fills pages with slabs. Knows heights and where a page may end; nothing of what the slabs show. */
import { gap, heightOf, type Slab } from './slab.ts';

/** A slab with the distance of its top from the top of the text. */
export interface Standing {
  readonly slab: Slab;
  readonly y: number;
}

/** The slabs on each page. `tooTall` holds those that no page can hold; they run past the foot and must be reported. */
export function fillPages(
  slabs: readonly Slab[],
  heightPt: number,
): { readonly pages: readonly (readonly Standing[])[]; readonly tooTall: readonly Slab[] } {
  const pages: Standing[][] = [[]];
  const tooTall: Slab[] = [];
  let y = 0;
  const page = (): Standing[] => pages.at(-1) ?? [];
  const put = (slab: Slab): void => {
    page().push({ slab, y });
    y += slab.heightPt;
  };
  const turn = (): void => {
    pages.push([]);
    y = 0;
  };
  for (let from = 0; from < slabs.length; ) {
    const first = slabs[from] ?? gap(0);
    if (first.kind === 'new-page') {
      if (page().length > 0) turn();
      from += 1;
      continue;
    }
    if (first.kind === 'gap' && first.breakBelow) {
      if (page().length > 0) y += first.heightPt;
      from += 1;
      continue;
    }
    let to = from + 1;
    while (to < slabs.length && slabs[to - 1]?.breakBelow === false && slabs[to]?.kind !== 'new-page')
      to += 1;
    const group = slabs.slice(from, to);
    const room = (): number => heightPt - y + 0.01;
    if (heightOf(group) > room() && page().length > 0) turn();
    const head = page().length === 0 ? (first.head ?? []) : [];
    if (heightOf(group) + heightOf(head) <= room()) {
      for (const slab of [...head, ...group]) if (slab.kind !== 'gap' || page().length > 0) put(slab);
    } else {
      // More than a page must stay together: it is broken where it comes, which beats running off the paper.
      for (const slab of group) {
        if (slab.heightPt > room() && page().length > 0) turn();
        if (page().length === 0) for (const again of slab.head ?? []) put(again);
        if (slab.heightPt > room()) tooTall.push(slab);
        if (slab.kind !== 'gap' || page().length > 0) put(slab);
      }
    }
    from = to;
  }
  if (pages.length > 1 && page().length === 0) pages.pop();
  return { pages, tooTall };
}

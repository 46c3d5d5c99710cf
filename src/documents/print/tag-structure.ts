/**
 * The structure of a document as objects of its file: what each part is, in which order they are read, and which
 * marks on which page belong to it (ISO 32000-1:2008, 14.7.2 "Structure hierarchy", 14.7.4 "Structure content").
 */
import type { DrawnPage } from './draw-page.ts';
import type { Inside, Reference } from './inside-pdfkit.ts';
import { thousandths as n } from './operands.ts';
import type { Packer } from './pack-objects.ts';
import type { Page, StructureNode } from './page.ts';

/** Packs all parts, and the table that leads from the marks of each page to them. */
export function tagStructure(
  document: Inside,
  packer: Packer,
  structure: readonly StructureNode[],
  drawn: readonly (DrawnPage & { readonly page: Page; readonly reference: Reference })[],
): void {
  const { kids, begunOn } = readingOrder(structure, drawn);
  const first = packer.reserve(structure.length);
  const tables = packer.reserve(drawn.length + 1);
  const root = document.getStructTreeRoot();
  root.data['K'] = [referenceTo(first)];
  root.data['ParentTree'] = referenceTo(tables);
  root.data['ParentTreeNextKey'] = drawn.length;
  structure.forEach((part, node) => {
    const parent = part.parent === undefined ? root.id : first + part.parent;
    const children = kids[node] ?? [];
    const home = children.find((kid) => kid.page !== undefined)?.page;
    const listed = children.map((kid) =>
      kid.page === undefined
        ? `${first + kid.number} 0 R`
        : kid.page === home
          ? `${kid.number}`
          : `<</Type/MCR/Pg ${drawn[kid.page]?.reference}/MCID ${kid.number}>>`,
    );
    packer.add(
      first + node,
      `<</S/${part.role}/P ${parent} 0 R${home === undefined ? '' : `/Pg ${drawn[home]?.reference}`}${
        listed.length === 0 ? '' : `/K[${listed.join(' ')}]`
      }${part.alt === undefined ? '' : `/Alt${textString(part.alt)}`}${
        part.language === undefined ? '' : `/Lang${textString(part.language)}`
      }${attributes(part, drawn[begunOn[node] ?? 0]?.page)}>>`,
    );
  });
  drawn.forEach(({ owners }, page) => {
    packer.add(tables + 1 + page, `[${owners.map((owner) => `${first + owner} 0 R`).join(' ')}]`);
  });
  packer.add(tables, `<</Nums[${drawn.map((_, page) => `${page} ${tables + 1 + page} 0 R`).join(' ')}]>>`);
}

/** pdfkit spells what is no plain object by its own text. */
function referenceTo(number: number): object {
  return { [Symbol.toStringTag]: 'Reference', toString: () => `${number} 0 R` };
}

/** A child of a part: another part, or a numbered mark on a page. */
interface Kid {
  readonly number: number;
  readonly page: number | undefined;
}

/**
 * The children of each part, in the order in which they are drawn, and the page on which each begins. A part is
 * begun when it or one after it is first drawn, so parts stand in reading order even where nothing of them is
 * drawn, as in empty cells.
 */
function readingOrder(
  structure: readonly StructureNode[],
  drawn: readonly DrawnPage[],
): { readonly kids: readonly (readonly Kid[])[]; readonly begunOn: readonly number[] } {
  const kids: Kid[][] = [];
  const begunOn: number[] = [];
  const beginUpTo = (node: number, page: number): void => {
    for (let next = kids.length; next <= node; next += 1) {
      kids.push([]);
      begunOn.push(page);
      const parent = structure[next]?.parent;
      if (parent !== undefined) kids[parent]?.push({ number: next, page: undefined });
    }
  };
  drawn.forEach(({ owners }, page) => {
    owners.forEach((owner, number) => {
      if (owner >= structure.length)
        throw new Error(`The pages point to part ${owner} of a structure of ${structure.length}.`);
      beginUpTo(owner, page);
      kids[owner]?.push({ number, page });
    });
  });
  beginUpTo(structure.length - 1, drawn.length - 1);
  return { kids, begunOn };
}

function attributes(part: StructureNode, page: Page | undefined): string {
  if (part.box !== undefined && page !== undefined) {
    // On the page y runs up.
    const [left, top, right, bottom] = part.box;
    const box = [left, page.heightPt - bottom, right, page.heightPt - top].map(n).join(' ');
    return `/A<</O/Layout/Placement/Block/BBox[${box}]>>`;
  }
  const table = `${part.scope === undefined ? '' : `/Scope/${part.scope}`}${
    part.colSpan === undefined ? '' : `/ColSpan ${part.colSpan}`
  }${part.rowSpan === undefined ? '' : `/RowSpan ${part.rowSpan}`}`;
  return table === '' ? '' : `/A<</O/Table${table}>>`;
}

/** As UTF-16 with its mark (7.9.2.2), in hexadecimal, which needs no escapes. */
function textString(text: string): string {
  return `<${Buffer.from(`\ufeff${text}`, 'utf16le').swap16().toString('hex')}>`;
}

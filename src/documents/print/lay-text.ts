/** Words as slabs, one a line, and what every element that holds words needs for it. */
import type { Align, Inline, TextSize } from './content.ts';
import { type Part, shifted, type Words } from './set-down.ts';
import type { Line } from './set-line.ts';
import { pointsPerMm, type Setting, type Slab } from './slab.ts';
import { wrap } from './wrap.ts';

const factors: { readonly [size in TextSize]: number } = { small: 0.9, normal: 1, large: 1.25, huge: 1.6 };

/** The type size in points; `small` stops at the least size. */
export function sizeOf(size: TextSize, setting: Setting): number {
  return Math.max(setting.leastPt, setting.sizePt * factors[size]);
}

/** Lines of text as slabs; a page never ends after the first or before the last line of a paragraph. */
export function layText(
  inline: readonly Inline[],
  widthPt: number,
  sizePt: number,
  setting: Setting,
  options: {
    readonly node?: number;
    readonly align?: Align;
    readonly strong?: boolean;
    readonly what: string;
  },
): Slab[] {
  const { lines, tooWide } = wrap(inline, widthPt, sizePt, setting, options);
  if (tooWide !== undefined)
    noteTooWide(
      setting,
      `a word in ${options.what} "${plainText(inline).slice(0, 40)}"`,
      tooWide,
      widthPt,
      plainText(inline),
    );
  return lines.map((line, index) => ({
    kind: 'slab',
    heightPt: sizePt * setting.leading,
    parts: [placeLine(line, widthPt, setting, options.align ?? 'start')],
    breakBelow: (index > 0 && index < lines.length - 2) || index === lines.length - 1,
  }));
}

/** A line in a strip of one line's height. */
export function placeLine(line: Line, roomPt: number, setting: Setting, align: Align): Words {
  return { kind: 'words', line, roomPt, align, y: baseline(line.sizePt, setting) };
}

/** From the top of a strip of one line to its baseline. */
export function baseline(sizePt: number, setting: Setting): number {
  const { ascent, descent } = setting.measure.heights('regular');
  return ((setting.leading + ascent - descent) / 2) * sizePt;
}

export function plainText(inline: readonly Inline[]): string {
  return inline
    .map((item) =>
      item.kind === 'text' ? item.text : item.kind === 'break' ? ' ' : item.kind === 'mark' ? item.says : '',
    )
    .join('');
}

/** Less than a tenth of a millimetre too wide is seen by nobody and said by no figure below. */
const unseenPt = 0.1 * pointsPerMm;

/** @param words those that are too wide, as the plan has them */
export function noteTooWide(
  setting: Setting,
  what: string,
  neededPt: number,
  availablePt: number,
  words?: string,
): void {
  // On a card the next smaller type is tried instead.
  if (setting.hyphenates === true && neededPt - availablePt < unseenPt) return;
  const neededMm = Math.round((neededPt * 25.4) / 7.2) / 10;
  const availableMm = Math.round((availablePt * 25.4) / 7.2) / 10;
  setting.notes.overflows.push({
    what,
    neededMm,
    availableMm,
    wouldFit: `It needs ${neededMm} mm and has ${availableMm} mm: shorten it, or give it more room.`,
    ...(words !== undefined && { words }),
  });
}

/** Slabs stacked into one, its top left corner at dx, dy. */
export function stack(
  slabs: readonly Slab[],
  dx = 0,
  dy = 0,
): { readonly parts: readonly Part[]; readonly heightPt: number } {
  const parts: Part[] = [];
  let y = dy;
  for (const slab of slabs) {
    if (slab.parts.length > 0) parts.push(shifted(slab.parts, dx, y));
    y += slab.heightPt;
  }
  return { parts, heightPt: y - dy };
}

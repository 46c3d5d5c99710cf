/** Names in pictures: in as many lines as their room asks for, and never cut, for two names may differ at their end. */
import type { Shape } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';

/** From line to line, in ems: closer than in text, for a name is one thing. */
const leadingEm = 1.1;
/** From the middle of small letters to the baseline they stand on, in ems. */
const middleEm = 0.35;
const mmOfPt = 25.4 / 72;

/** A name in a picture: its words, their size in points, how strong, and the width they may take. */
export interface FigureName {
  readonly text: string;
  readonly sizePt: number;
  readonly strong: boolean;
  readonly roomMm: number;
}

export function widthMm(text: string, sizePt: number, strong: boolean, measure: Measure): number {
  const { pieces } = measure.pieces(text, strong, false);
  return pieces.reduce((sum, piece) => sum + measure.widthEm(piece.text, piece.font), 0) * sizePt * mmOfPt;
}

/** The lines of a name. It is broken at spaces, a word that is too wide after its hyphens, else between letters with one. */
export function linesOf({ text, sizePt, strong, roomMm }: FigureName, measure: Measure): readonly string[] {
  const fits = (part: string) => widthMm(part, sizePt, strong, measure) <= roomMm;
  const lines: string[] = [];
  let line = '';
  const put = (part: string, joint: string): void => {
    const longer = line === '' ? part : line + joint + part;
    if (fits(longer)) {
      line = longer;
      return;
    }
    if (line !== '') lines.push(line);
    line = part;
    while (!fits(line)) {
      const letters = [...line];
      let count = letters.length - 1;
      while (count > 1 && !fits(`${letters.slice(0, count).join('')}-`)) count -= 1;
      // A room that is narrower than a letter is none.
      if (count <= 1) return;
      lines.push(`${letters.slice(0, count).join('')}-`);
      line = letters.slice(count).join('');
    }
  };
  for (const word of text.split(' ')) {
    const parts = fits(line === '' ? word : `${line} ${word}`) ? [word] : word.split(/(?<=[-/])/);
    for (const [index, part] of parts.entries()) put(part, index === 0 ? ' ' : '');
  }
  return line === '' ? lines : [...lines, line];
}

/** How high so many lines are. */
export function heightMm(lines: number, sizePt: number): number {
  return lines * leadingEm * sizePt * mmOfPt;
}

/** The lines of a name from x on, their middle at y. */
export function nameShapes(x: number, y: number, name: FigureName, measure: Measure): Shape[] {
  const lines = linesOf(name, measure);
  const { sizePt, strong } = name;
  const em = sizePt * mmOfPt;
  return lines.map((text, index) => ({
    kind: 'words',
    x,
    y: y + ((index - (lines.length - 1) / 2) * leadingEm + middleEm) * em,
    text,
    sizePt,
    align: 'start',
    strong,
  }));
}

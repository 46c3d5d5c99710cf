/**
 * A QR code (ISO/IEC 18004) as a figure. Error correction M restores about 15 %; the quiet zone is four
 * modules on every side. A module of 0.423 mm is a whole number of dots at 300 and 600 dpi (5 and 10), and
 * above the 0.4 mm that telephones read at hand distance (common practice). What it says must also be in print.
 */
import type { Scene, Shape } from './content.ts';

/** Five dots of a printer with 300 to the inch, for paper in the hand. */
export const plainModuleMm = (5 * 25.4) / 300;
/** Four dots: as small as a telephone still reads close up, for small cards. */
export const fineModuleMm = (4 * 25.4) / 300;
const quietModules = 4;

/** @throws Error if the text is too long for any QR code */
export async function qrScene(text: string, alt: string, moduleMm = plainModuleMm): Promise<Scene> {
  // By its name: the compiled program requires packages, and required so an ESM one has its default a step further down.
  const { encodeQR } = await import('qr');
  const matrix = encodeQR(text, 'raw', { ecc: 'medium', border: quietModules });
  const sideMm = matrix.length * moduleMm;
  const shapes: Shape[] = [];
  matrix.forEach((row, y) => {
    // Dark modules side by side are one bar: white seams between them would confuse a reader.
    for (let from = 0; from < row.length; from += 1) {
      if (row[from] !== true) continue;
      let to = from;
      while (row[to + 1] === true) to += 1;
      const [left, right, top] = [from, to + 1, y].map((at) => at * moduleMm) as [number, number, number];
      shapes.push({
        kind: 'polygon',
        points: [
          [left, top],
          [right, top],
          [right, top + moduleMm],
          [left, top + moduleMm],
        ],
        fill: 0,
      });
      from = to;
    }
  });
  return { widthMm: sideMm, heightMm: sideMm, alt, shapes };
}

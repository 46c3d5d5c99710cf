/** The check-ins of a day as a strip of 24 hours, as the clocks of the plan show them on its first days. */
import type { Occurrence } from '../../consequences/occurrences.ts';
import type { CheckIn } from '../../plan/model.ts';
import type { Scene, Shape } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';
import { linesOf, heightMm as nameHeightMm, nameShapes } from './figure-words.ts';

const widthMm = 180;
const leftMm = 52;
const hourMm = (widthMm - leftMm - 4) / 24;
const rowMm = 6;
const nameMm = leftMm - 5;
const topMm = 6;

/** @param week occurrences of some days, from which each check-in's times on the clock are taken */
export function dayStrip(
  checkIns: readonly CheckIn[],
  week: readonly Occurrence[],
  alt: string,
  measure: Measure,
): Scene {
  let top = topMm;
  const rows = checkIns.map((checkIn) => {
    const name = { text: checkIn.name, sizePt: 9, strong: !checkIn.listen, roomMm: nameMm };
    const high = Math.max(rowMm, nameHeightMm(linesOf(name, measure).length, name.sizePt) + 1.5);
    top += high;
    return { checkIn, name, y: top - high / 2 };
  });
  const heightMm = top + 1;
  const shapes: Shape[] = [];
  for (let hour = 0; hour <= 24; hour += 3) {
    const x = leftMm + hour * hourMm;
    shapes.push(
      {
        kind: 'line',
        points: [
          [x, topMm - 1.2],
          [x, heightMm],
        ],
        widthMm: 0.15,
      },
      { kind: 'words', x, y: topMm - 2, text: String(hour).padStart(2, '0'), sizePt: 8, align: 'center' },
    );
  }
  for (const { checkIn, name, y } of rows) {
    shapes.push(...nameShapes(0, y, name, measure));
    const minutes = new Set(
      week.filter((one) => one.checkIn.id === checkIn.id).map(({ local }) => local.minute),
    );
    for (const minute of minutes) {
      const from = leftMm + (minute / 60) * hourMm;
      const to = Math.min(widthMm, from + Math.max((checkIn.lastsMin / 60) * hourMm, 1));
      shapes.push({
        kind: 'polygon',
        points: [
          [from, y - 1.6],
          [to, y - 1.6],
          [to, y + 1.6],
          [from, y + 1.6],
        ],
        // A roll call is a full bar, a listening watch an empty one.
        ...(checkIn.listen ? { strokeMm: 0.3 } : { fill: 0 }),
      });
    }
  }
  return { widthMm, heightMm, alt, shapes };
}

/** The channels on the scale of their bands: a dot where each receives, a ring where it transmits. */
import type { ChannelParticulars } from '../../consequences/channel-particulars.ts';
import { megahertz } from '../figures.ts';
import type { Scene, Shape } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';
import { heightMm, linesOf, nameShapes } from './figure-words.ts';

const widthMm = 180;
const leftMm = 8;
const rightMm = 148;
const laneMm = 5.5;
const nameMm = widthMm - rightMm - 3;
/** Frequencies further apart than this stand on different scales. */
const apartHz = 12_000_000;

export function bandChart(channels: readonly ChannelParticulars[], alt: string, measure: Measure): Scene {
  const shapes: Shape[] = [];
  let y = 1;
  for (const group of bandsOf(channels)) {
    const ends = group.flatMap(spanOf);
    const [low, high] = [Math.min(...ends), Math.max(...ends)];
    const room = Math.max((high - low) * 0.06, 100_000);
    const [from, to] = [low - room, high + room];
    const at = (hz: number) => leftMm + ((hz - from) / (to - from)) * (rightMm - leftMm);
    for (const on of group) {
      const name = { text: `${on.slot} ${on.name}`, sizePt: 9, strong: true, roomMm: nameMm };
      const high = Math.max(laneMm, heightMm(linesOf(name, measure).length, name.sizePt) + 1.5);
      const middle = y + high / 2;
      const [rx, tx] = [at(on.receiveHz), at(on.transmitHz ?? on.receiveHz)];
      shapes.push({
        kind: 'line',
        points: [
          [leftMm, middle],
          [rightMm, middle],
        ],
        widthMm: 0.1,
        dashMm: [0.4, 1.2],
      });
      if (on.transmitHz !== undefined && tx !== rx)
        shapes.push({
          kind: 'line',
          points: [
            [rx, middle],
            [tx, middle],
          ],
          widthMm: 0.4,
        });
      if (on.transmitHz !== undefined)
        shapes.push({ kind: 'circle', x: tx, y: middle, radiusMm: 1.7, fill: 1, strokeMm: 0.35 });
      shapes.push(
        { kind: 'circle', x: rx, y: middle, radiusMm: 0.9, fill: 0 },
        ...nameShapes(rightMm + 3, middle, name, measure),
      );
      y += high;
    }
    shapes.push(
      {
        kind: 'line',
        points: [
          [leftMm, y + 0.5],
          [rightMm, y + 0.5],
        ],
        widthMm: 0.4,
      },
      ...marks(low, high).flatMap((hz): Shape[] => [
        {
          kind: 'line',
          points: [
            [at(hz), y - 0.3],
            [at(hz), y + 1.3],
          ],
          widthMm: 0.3,
        },
        { kind: 'words', x: at(hz), y: y + 4.6, text: megahertz(hz), sizePt: 8, align: 'center' },
      ]),
    );
    y += 9;
  }
  return { widthMm, heightMm: y, alt, shapes };
}

function spanOf(on: ChannelParticulars): number[] {
  return [on.receiveHz, on.transmitHz ?? on.receiveHz];
}

function bandsOf(channels: readonly ChannelParticulars[]): ChannelParticulars[][] {
  const groups: ChannelParticulars[][] = [];
  let top = Number.NEGATIVE_INFINITY;
  for (const on of channels.toSorted((a, b) => Math.min(...spanOf(a)) - Math.min(...spanOf(b)))) {
    const last = groups.at(-1);
    if (last === undefined || Math.min(...spanOf(on)) - top > apartHz) groups.push([on]);
    else last.push(on);
    top = Math.max(top, ...spanOf(on));
  }
  return groups;
}

/** The two ends, and the middle where there is room between them. */
function marks(low: number, high: number): number[] {
  return high - low < 500_000 ? [low] : [low, high];
}

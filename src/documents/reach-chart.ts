/**
 * The chart of where a station is reached: the shaded ground as a picture, and over it, as an SVG drawing, the
 * places, the station, a scale bar, north, a legend of the textures and the caution. It reads in grey.
 */
import { writePng } from '../reach/png.ts';
import type { Position } from '../reach/position.ts';
import { type ReachPictureInput, reachPicture } from '../reach/reach-picture.ts';

export interface ReachChartData extends ReachPictureInput {
  readonly title: string;
  /** Lines under the title: radio, channel, revision. */
  readonly lines: readonly string[];
  readonly station: { readonly name: string; readonly at: Position };
  readonly places: readonly { readonly name: string; readonly at: Position }[];
  readonly words: {
    readonly solid: string;
    readonly likely: string;
    readonly doubtful: string;
    readonly no: string;
    readonly unknown: string;
    readonly north: string;
  };
  readonly caution: string;
}

const margin = 24;
const headHeight = 78;
const footHeight = 96;

export function reachChart(data: ReachChartData): string {
  const picture = reachPicture(data);
  const width = picture.widthPx + 2 * margin;
  const height = picture.heightPx + headHeight + footHeight;
  const png = (bytes: Uint8Array) => `data:image/png;base64,${Buffer.from(bytes).toString('base64')}`;
  const label = (x: number, y: number, text: string, extra = '') =>
    // A white edge keeps black words readable on the darkest tone.
    `<text x="${round(x)}" y="${round(y)}" paint-order="stroke" stroke="#fff" stroke-width="4" stroke-linejoin="round"${extra}>${escaped(text)}</text>`;
  const marks = data.places.flatMap(({ name, at }) => {
    const { x, y } = picture.pixelOf(at);
    if (x < 0 || y < 0 || x > picture.widthPx || y > picture.heightPx) return [];
    const onRight = x < picture.widthPx - 160;
    return [
      `<circle cx="${round(x)}" cy="${round(y)}" r="4.5" fill="#000" stroke="#fff" stroke-width="2"/>`,
      label(onRight ? x + 9 : x - 9, y + 5, name, onRight ? '' : ' text-anchor="end"'),
    ];
  });
  const home = picture.pixelOf(data.station.at);
  const star = `<path d="M${round(home.x)} ${round(home.y - 10)}l9 17h-18z" fill="#000" stroke="#fff" stroke-width="2"/>`;
  const bottom = headHeight + picture.heightPx;
  const barKm =
    picture.scaleBar.lengthM >= 1000
      ? `${picture.scaleBar.lengthM / 1000} km`
      : `${picture.scaleBar.lengthM} m`;
  const legend = picture.legend.map(({ verdict, sample }, index) => {
    const x = margin + index * 132;
    return `<image x="${x}" y="${bottom + 16}" width="${sample.widthPx}" height="${sample.heightPx}" href="${png(writePng(sample))}"/><rect x="${x}" y="${bottom + 16}" width="${sample.widthPx}" height="${sample.heightPx}" fill="none" stroke="#000"/><text x="${x + sample.widthPx + 6}" y="${bottom + 33}">${escaped(data.words[verdict])}</text>`;
  });
  const barX = width - margin - picture.scaleBar.widthPx - 40;
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="B612, 'DejaVu Sans', sans-serif" font-size="15" role="img" aria-labelledby="title caution">
<title id="title">${escaped(data.title)}</title>
<desc id="caution">${escaped(data.caution)}</desc>
<rect width="${width}" height="${height}" fill="#fff"/>
<text x="${margin}" y="30" font-size="21" font-weight="bold">${escaped(data.title)}</text>
${data.lines.map((line, index) => `<text x="${margin}" y="${50 + index * 18}">${escaped(line)}</text>`).join('\n')}
<g transform="translate(${margin} ${headHeight})">
<image width="${picture.widthPx}" height="${picture.heightPx}" href="${png(writePng(picture))}"/>
<rect width="${picture.widthPx}" height="${picture.heightPx}" fill="none" stroke="#000"/>
${marks.join('\n')}
${star}
${label(home.x + 12, home.y - 6, data.station.name, ' font-weight="bold"')}
</g>
${legend.join('\n')}
<path d="M${round(barX)} ${bottom + 20}v10h${round(picture.scaleBar.widthPx)}v-10" fill="none" stroke="#000" stroke-width="2"/>
<text x="${round(barX)}" y="${bottom + 48}">${barKm}</text>
<path d="M${width - margin - 12} ${bottom + 38}v-24m-6 8l6 -9 6 9" fill="none" stroke="#000" stroke-width="2"/>
<text x="${width - margin - 12}" y="${bottom + 54}" text-anchor="middle">${escaped(data.words.north)}</text>
<text x="${margin}" y="${bottom + 78}" font-size="13">${escaped(data.caution)}</text>
</svg>
`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/**
 * A grid as the bytes of a GeoTIFF: one band, one strip of Deflate data (or plain), latitude and longitude on WGS 84, samples
 * as points. The same values give the same bytes.
 *
 * Source: TIFF Revision 6.0 (1992); OGC GeoTIFF Standard 1.1 (19-008r4); the no-data tag 42113 is GDAL's, and what
 * other programs read.
 */
import { deflateSync } from 'node:zlib';

export interface RasterToWrite {
  readonly columns: number;
  readonly rows: number;
  /** Where the north-west sample stands. */
  readonly northDeg: number;
  readonly westDeg: number;
  readonly stepNorthDeg: number;
  readonly stepEastDeg: number;
  readonly samples: Int16Array | Float32Array | Uint8Array;
  /** What stands for "no data": a number, or NaN in floating samples. */
  readonly voidValue?: number;
  /** What the samples are, for programs that show it. */
  readonly description?: string;
  /** Plain strips are larger and read faster. */
  readonly isPlain?: boolean;
}

const types = { short: 3, long: 4, double: 12, ascii: 2 } as const;
const widths = { short: 2, long: 4, double: 8, ascii: 1 } as const;

interface Entry {
  readonly tag: number;
  readonly type: keyof typeof types;
  readonly values: readonly number[];
}

export function writeGeotiff(raster: RasterToWrite): Uint8Array {
  const [head, data] = geotiffParts(raster);
  const bytes = new Uint8Array(head.length + data.length);
  bytes.set(head);
  bytes.set(data, head.length);
  return bytes;
}

/** The same in two parts, so that large data go to their file without a copy: plain data are the samples' own memory. */
export function geotiffParts(raster: RasterToWrite): readonly [head: Uint8Array, data: Uint8Array] {
  const { samples, columns, rows } = raster;
  const plain = littleEndianBytes(samples);
  const data = raster.isPlain ? plain : deflateSync(plain);
  const ascii = (tag: number, text: string): Entry => ({
    tag,
    type: 'ascii',
    values: [...text].map((letter) => letter.charCodeAt(0)).concat(0),
  });
  const short = (tag: number, ...values: number[]): Entry => ({ tag, type: 'short', values });
  const long = (tag: number, ...values: number[]): Entry => ({ tag, type: 'long', values });
  const double = (tag: number, ...values: number[]): Entry => ({ tag, type: 'double', values });

  // Entries stand in ascending order of their tags, as the standard asks.
  const entries: Entry[] = [
    long(256, columns),
    long(257, rows),
    short(258, 8 * samples.BYTES_PER_ELEMENT),
    short(259, raster.isPlain ? 1 : 8),
    short(262, 1),
    ...(raster.description ? [ascii(270, raster.description)] : []),
    long(273, 0),
    short(277, 1),
    long(278, rows),
    long(279, data.length),
    short(339, samples instanceof Float32Array ? 3 : samples instanceof Int16Array ? 2 : 1),
    double(33_550, raster.stepEastDeg, raster.stepNorthDeg, 0),
    double(33_922, 0, 0, 0, raster.westDeg, raster.northDeg, 0),
    // Geographic, samples are points, WGS 84.
    short(34_735, 1, 1, 0, 3, 1024, 0, 1, 2, 1025, 0, 1, 2, 2048, 0, 1, 4326),
    ...(raster.voidValue === undefined
      ? []
      : [ascii(42_113, Number.isNaN(raster.voidValue) ? 'nan' : String(raster.voidValue))]),
  ];
  return [head(entries), data];
}

/** All that comes before the data. */
function head(entries: readonly Entry[]): Uint8Array {
  const directoryAt = 8;
  let freeAt = directoryAt + 2 + 12 * entries.length + 4;
  const places = entries.map((entry) => {
    const length = entry.values.length * widths[entry.type];
    if (length <= 4) return undefined;
    const at = freeAt;
    freeAt += length + (length % 2);
    return at;
  });
  const dataAt = freeAt;
  const bytes = new Uint8Array(dataAt);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, 0x4949);
  view.setUint16(2, 42, true);
  view.setUint32(4, directoryAt, true);
  view.setUint16(directoryAt, entries.length, true);
  for (const [index, entry] of entries.entries()) {
    const at = directoryAt + 2 + 12 * index;
    const place = places[index];
    view.setUint16(at, entry.tag, true);
    view.setUint16(at + 2, types[entry.type], true);
    view.setUint32(at + 4, entry.values.length, true);
    if (place !== undefined) view.setUint32(at + 8, place, true);
    const values = entry.tag === 273 ? [dataAt] : entry.values;
    for (const [step, value] of values.entries()) {
      const where = (place ?? at + 8) + step * widths[entry.type];
      if (entry.type === 'short') view.setUint16(where, value, true);
      else if (entry.type === 'long') view.setUint32(where, value, true);
      else if (entry.type === 'double') view.setFloat64(where, value, true);
      else view.setUint8(where, value);
    }
  }
  return bytes;
}

function littleEndianBytes(samples: Int16Array | Float32Array | Uint8Array): Uint8Array {
  const own = new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
  const isLittleEndianMachine = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1;
  if (isLittleEndianMachine) return own;
  const bytes = Uint8Array.from(own);
  const width = samples.BYTES_PER_ELEMENT;
  for (let at = 0; at < bytes.length; at += width) bytes.subarray(at, at + width).reverse();
  return bytes;
}

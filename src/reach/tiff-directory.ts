/**
 * The first directory of a TIFF file, read by hand so that every size in it can be weighed before any image data are
 * touched: files come from strangers, and one of 389 KB can ask for gigabytes.
 *
 * Source: TIFF Revision 6.0 (1992), sections 2 and 8; field types from there and Technical Note 1.
 */
import { Refusal } from '../findings/refusal.ts';

export interface TiffDirectory {
  readonly littleEndian: boolean;
  /** Numbers of a tag, empty if the tag is absent. */
  numbers(tag: number): readonly number[];
  /** Text of a tag without its closing NUL, empty if absent. */
  text(tag: number): string;
}

const sizes: Readonly<Record<number, number>> = {
  1: 1,
  2: 1,
  3: 2,
  4: 4,
  5: 8,
  6: 1,
  7: 1,
  8: 2,
  9: 4,
  10: 8,
  11: 4,
  12: 8,
  13: 4,
};

/** No tag of an elevation grid has more values than this: a strip for each row of the largest grid allowed, and to spare. */
const mostValues = 1_000_000;

export function readTiffDirectory(bytes: Uint8Array, name: string): TiffDirectory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const order = bytes.length >= 8 ? view.getUint16(0) : 0;
  if (order !== 0x4949 && order !== 0x4d4d) {
    throw new Refusal(`${name} is no TIFF file.`, 'Name a GeoTIFF (.tif) or an SRTM tile (.hgt).');
  }
  const littleEndian = order === 0x4949;
  const version = view.getUint16(2, littleEndian);
  if (version === 43) {
    throw new Refusal(
      `${name} is a BigTIFF file, which is not read.`,
      'Cut it down to the area of the plan and save it as plain TIFF.',
    );
  }
  if (version !== 42) throw new Refusal(`${name} is no TIFF file: its version is ${version}, not 42.`);

  const truncated = () =>
    new Refusal(
      `${name} ends before its directory does; it is cut short or damaged.`,
      'Fetch the file again.',
    );
  const start = view.getUint32(4, littleEndian);
  if (start + 2 > bytes.length) throw truncated();
  const count = view.getUint16(start, littleEndian);
  if (start + 2 + 12 * count > bytes.length) throw truncated();

  const entries = new Map<number, { type: number; count: number; at: number }>();
  for (let index = 0; index < count; index++) {
    const at = start + 2 + 12 * index;
    const type = view.getUint16(at + 2, littleEndian);
    const size = sizes[type];
    if (size === undefined) continue;
    const values = view.getUint32(at + 4, littleEndian);
    if (values > mostValues) {
      throw new Refusal(
        `${name} has a directory entry of ${values} values, more than any elevation grid needs.`,
      );
    }
    const isInline = size * values <= 4;
    const dataAt = isInline ? at + 8 : view.getUint32(at + 8, littleEndian);
    if (dataAt + size * values > bytes.length) throw truncated();
    entries.set(view.getUint16(at, littleEndian), { type, count: values, at: dataAt });
  }
  return {
    littleEndian,
    numbers(tag) {
      const entry = entries.get(tag);
      if (!entry) return [];
      const size = sizes[entry.type] ?? 1;
      return Array.from({ length: entry.count }, (_, index) =>
        numberAt(view, entry.at + size * index, entry.type, littleEndian),
      );
    },
    text(tag) {
      const entry = entries.get(tag);
      if (!entry) return '';
      return (
        String.fromCharCode(...bytes.subarray(entry.at, entry.at + Math.min(entry.count, 1000))).split(
          '\0',
        )[0] ?? ''
      );
    },
  };
}

function numberAt(view: DataView, at: number, type: number, littleEndian: boolean): number {
  switch (type) {
    case 3:
      return view.getUint16(at, littleEndian);
    case 4:
    case 13:
      return view.getUint32(at, littleEndian);
    case 5:
      return view.getUint32(at, littleEndian) / view.getUint32(at + 4, littleEndian);
    case 6:
      return view.getInt8(at);
    case 8:
      return view.getInt16(at, littleEndian);
    case 9:
      return view.getInt32(at, littleEndian);
    case 10:
      return view.getInt32(at, littleEndian) / view.getInt32(at + 4, littleEndian);
    case 11:
      return view.getFloat32(at, littleEndian);
    case 12:
      return view.getFloat64(at, littleEndian);
    default:
      return view.getUint8(at);
  }
}

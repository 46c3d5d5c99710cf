/**
 * An elevation grid from the bytes of a GeoTIFF file. The file is untrusted: its own size, the size of the image, and
 * what each strip or tile would unpack to are weighed before anything is unpacked.
 *
 * Plain and Deflate data are unpacked here, with a bound; other compressions are left to the `geotiff` package.
 */
import { Refusal } from '../findings/refusal.ts';
import { geotiffFrame } from './geotiff-frame.ts';
import { believableHeightsM, type ElevationGrid, voidHeight } from './grid.ts';
import { type SampleLayout, samplesOfBlock } from './tiff-block.ts';
import { readTiffDirectory, type TiffDirectory } from './tiff-directory.ts';

/** Largest file and image read. 40 million samples are a one-arc-second tile three times over. */
const largestFileBytes = 256 * 1024 * 1024;
const largestGridSamples = 40_000_000;

const cutDown = 'Cut it down to the area of the plan with a GIS program.';

export async function readGeotiff(bytes: Uint8Array, name: string): Promise<ElevationGrid> {
  if (bytes.length > largestFileBytes) {
    throw new Refusal(
      `${name} has ${Math.round(bytes.length / 1_048_576)} MiB; files up to 256 MiB are read.`,
      cutDown,
    );
  }
  const directory = readTiffDirectory(bytes, name);
  const layout = readLayout(directory, name);
  const frame = geotiffFrame(directory, name);
  const samples = layout.unpacked ? unpack(bytes, layout, name) : await unpackElsewhere(bytes, layout, name);
  const declaredVoid = Number.parseFloat(directory.text(42_113));
  return {
    name,
    columns: layout.columns,
    rows: layout.rows,
    ...frame,
    heightsM: withVoids(samples, declaredVoid, layout.isWholeMetres),
  };
}

interface Layout extends SampleLayout {
  readonly columns: number;
  readonly rows: number;
  readonly blockColumns: number;
  readonly blockRows: number;
  readonly offsets: readonly number[];
  readonly byteCounts: readonly number[];
  /** True where the data can be unpacked here. */
  readonly unpacked: boolean;
  readonly isWholeMetres: boolean;
}

function readLayout(directory: TiffDirectory, name: string): Layout {
  const one = (tag: number, otherwise: number) => directory.numbers(tag)[0] ?? otherwise;
  const columns = one(256, 0);
  const rows = one(257, 0);
  if (columns < 2 || rows < 2)
    throw new Refusal(`${name} is ${columns} by ${rows} samples, which is no grid.`);
  if (columns * rows > largestGridSamples) {
    throw new Refusal(
      `${name} is ${columns} by ${rows} samples; up to ${largestGridSamples} are read.`,
      cutDown,
    );
  }
  if (one(277, 1) !== 1) {
    throw new Refusal(
      `${name} has ${one(277, 1)} values in each place: a picture, not an elevation grid.`,
      'Name a file with one band of heights.',
    );
  }
  const bits = one(258, 1);
  const format = one(339, 1);
  const isFloat = format === 3;
  if (!(format === 1 || format === 2 || isFloat) || !(isFloat ? [32, 64] : [8, 16, 32]).includes(bits)) {
    throw new Refusal(
      `${name} has samples of ${bits} bits in format ${format}, which are not read.`,
      'Save it with 16-bit whole or 32-bit floating heights.',
    );
  }
  const isTiled = directory.numbers(322).length > 0;
  const blockColumns = isTiled ? one(322, 0) : columns;
  const blockRows = isTiled ? one(323, 0) : Math.min(one(278, rows), rows);
  if (blockColumns < 1 || blockRows < 1) throw new Refusal(`${name} has strips or tiles without size.`);
  // A tile may stick out over the edge, though not make a small grid unpack to a huge one.
  if (
    blockColumns * blockRows > Math.max(4 * columns * rows, 1_048_576) ||
    blockColumns * blockRows > largestGridSamples
  ) {
    throw new Refusal(
      `${name} has tiles of ${blockColumns} by ${blockRows} samples around a grid of ${columns} by ${rows}.`,
    );
  }
  const offsets = directory.numbers(isTiled ? 324 : 273);
  const byteCounts = directory.numbers(isTiled ? 325 : 279);
  const blocks = Math.ceil(columns / blockColumns) * Math.ceil(rows / blockRows);
  if (offsets.length !== blocks || byteCounts.length !== blocks) {
    throw new Refusal(
      `${name} names ${offsets.length} strips or tiles where its size needs ${blocks}.`,
      'Fetch the file again.',
    );
  }
  const compression = one(259, 1);
  const predictor = one(317, 1);
  const unpacked = [1, 8, 32_946].includes(compression) && [1, 2, 3].includes(predictor);
  return {
    columns,
    rows,
    blockColumns,
    blockRows,
    offsets,
    byteCounts,
    unpacked,
    isWholeMetres: !isFloat && bits <= 16 && !(format === 1 && bits === 16),
    bytesPerSample: bits / 8,
    kind: isFloat ? 'float' : format === 2 ? 'signed' : 'unsigned',
    isDeflated: compression !== 1,
    predictor,
    compression,
    littleEndian: directory.littleEndian,
  };
}

function unpack(bytes: Uint8Array, layout: Layout, name: string): Float32Array {
  const { columns, rows, blockColumns, blockRows } = layout;
  const asTheyStand = plainFloats(bytes, layout);
  if (asTheyStand) return asTheyStand;
  const heights = new Float32Array(columns * rows);
  const across = Math.ceil(columns / blockColumns);
  for (const [index, offset] of layout.offsets.entries()) {
    const length = layout.byteCounts[index] ?? 0;
    if (offset + length > bytes.length) {
      throw new Refusal(`${name} ends before its data do; it is cut short.`, 'Fetch the file again.');
    }
    const left = (index % across) * blockColumns;
    const top = Math.floor(index / across) * blockRows;
    // The last strip holds the rows that are left; a tile is always whole.
    const height = blockColumns === columns ? Math.min(blockRows, rows - top) : blockRows;
    const block = samplesOfBlock(bytes.subarray(offset, offset + length), blockColumns, height, layout, name);
    const width = Math.min(blockColumns, columns - left);
    for (let row = 0; row < Math.min(height, rows - top); row++) {
      heights.set(
        block.subarray(row * blockColumns, row * blockColumns + width),
        (top + row) * columns + left,
      );
    }
  }
  return heights;
}

/** Only to read faster: what is read does not depend on it. */
const isLittleEndianMachine = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1;

/**
 * The samples without copying them, where the file has them just as the machine keeps them: plain 32-bit floating numbers, strip after strip
 * without gaps, on a whole multiple of four bytes. A grid of many millions is then ready at once, on shared memory if the file was read into such.
 */
function plainFloats(bytes: Uint8Array, layout: Layout): Float32Array | undefined {
  const { columns, rows, blockColumns, kind, bytesPerSample, offsets, byteCounts } = layout;
  const first = offsets[0] ?? 0;
  const isPlain =
    layout.compression === 1 &&
    layout.predictor === 1 &&
    kind === 'float' &&
    bytesPerSample === 4 &&
    layout.littleEndian === isLittleEndianMachine &&
    blockColumns === columns;
  if (!isPlain || (bytes.byteOffset + first) % 4 !== 0) return undefined;
  const isUnbroken = offsets.every(
    (offset, index) => index === 0 || offset === (offsets[index - 1] ?? 0) + (byteCounts[index - 1] ?? 0),
  );
  const count = columns * rows;
  const length = byteCounts.reduce((sum, each) => sum + each, 0);
  if (!isUnbroken || length !== 4 * count || first + length > bytes.length) return undefined;
  return new Float32Array(bytes.buffer, bytes.byteOffset + first, count);
}

/** Most bytes that a byte of LZW or PackBits data can stand for, with something to spare. */
const steepestExpansion = 1500;

async function unpackElsewhere(bytes: Uint8Array, layout: Layout, name: string): Promise<Float32Array> {
  const blockBytes = layout.blockColumns * layout.blockRows * layout.bytesPerSample;
  for (const [index, length] of layout.byteCounts.entries()) {
    if ((layout.offsets[index] ?? 0) + length > bytes.length) {
      throw new Refusal(`${name} ends before its data do; it is cut short.`, 'Fetch the file again.');
    }
    if (length * steepestExpansion > 512 * 1024 * 1024 && length > 2 * blockBytes) {
      throw new Refusal(
        `${name} has a strip or tile far larger than what it should hold.`,
        'Fetch the file again.',
      );
    }
  }
  const { fromArrayBuffer } = await import('geotiff');
  try {
    const copy = new Uint8Array(bytes);
    const image = await (await fromArrayBuffer(copy.buffer)).getImage();
    const [band] = await image.readRasters();
    if (!band || typeof band === 'number') throw new Error('no band');
    if (band.length !== layout.columns * layout.rows) throw new Error('band of another size');
    return Float32Array.from(band);
  } catch (fault) {
    const why = fault instanceof Error ? fault.message : String(fault);
    throw new Refusal(
      `${name} could not be unpacked (compression ${layout.compression}): ${why}.`,
      'Save it uncompressed or with Deflate compression.',
    );
  }
}

/** Heights with one mark for all voids. Samples that have no other are given back as they are, and are never written to: they may be the file's own. */
function withVoids(
  samples: Float32Array,
  declaredVoid: number,
  isWholeMetres: boolean,
): Int16Array | Float32Array {
  const declared = Math.fround(declaredVoid);
  const { lowest, highest } = believableHeightsM;
  if (!isWholeMetres && !hasOtherVoids(samples, declared)) return samples;
  const heights = isWholeMetres ? new Int16Array(samples.length) : new Float32Array(samples.length);
  const none = isWholeMetres ? voidHeight : Number.NaN;
  for (let index = 0; index < samples.length; index++) {
    const height = samples[index] ?? Number.NaN;
    heights[index] = height >= lowest && height <= highest && height !== declared ? height : none;
  }
  return heights;
}

/** Whether any void is not NaN. */
function hasOtherVoids(samples: Float32Array, declared: number): boolean {
  const { lowest, highest } = believableHeightsM;
  // The bits of positive floating numbers rise with them (IEEE 754), and as numbers without sign those of all others stand above: one
  // comparison is enough for most ground.
  const words = new Uint32Array(samples.buffer, samples.byteOffset, samples.length);
  const isBelievable = declared > 0 && declared <= highest;
  const plainest = isBelievable ? 0 : (new Uint32Array(Float32Array.of(highest).buffer)[0] ?? 0);
  for (let index = 0; index < words.length; index++) {
    if ((words[index] ?? 0) <= plainest) continue;
    const height = samples[index] ?? Number.NaN;
    if (height < lowest || height > highest || height === declared) return true;
  }
  return false;
}

/**
 * One strip or tile of a TIFF file, unpacked into heights. Source: TIFF Revision 6.0, sections 13 and 14 (predictor 2:
 * differences along the row); TIFF Technical Note 3 (predictor 3: bytes of floating numbers sorted by weight, then
 * differences).
 */
import { inflateSync } from 'node:zlib';
import { Refusal } from '../findings/refusal.ts';

export interface SampleLayout {
  readonly bytesPerSample: number;
  readonly kind: 'signed' | 'unsigned' | 'float';
  readonly isDeflated: boolean;
  readonly predictor: number;
  readonly compression: number;
  readonly littleEndian: boolean;
}

export function samplesOfBlock(
  packed: Uint8Array,
  columns: number,
  rows: number,
  layout: SampleLayout,
  name: string,
): Float32Array {
  const wanted = columns * rows * layout.bytesPerSample;
  const bytes = layout.isDeflated ? inflated(packed, wanted, name) : packed;
  if (bytes.length < wanted) {
    throw new Refusal(
      `${name} has a strip or tile of ${bytes.length} bytes where ${wanted} belong.`,
      'Fetch the file again.',
    );
  }
  if (layout.predictor === 3) return floatsOfPredictor3(bytes, columns, rows, layout);
  const samples = plainSamples(bytes, columns * rows, layout);
  if (layout.predictor === 2) sumAlongRows(samples, columns, rows, layout);
  return samples instanceof Float32Array ? samples : new Float32Array(samples);
}

function inflated(packed: Uint8Array, wanted: number, name: string): Uint8Array {
  try {
    // Some writers fill up the last strip, hence the slack; beyond it the file is lying about its size.
    return inflateSync(packed, { maxOutputLength: Math.max(2 * wanted, 65_536) });
  } catch {
    throw new Refusal(
      `${name} has a strip or tile that does not unpack to what it should hold.`,
      'Fetch the file again.',
    );
  }
}

/** Only to copy faster: what is read does not depend on it. */
const isLittleEndianMachine = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1;

function plainSamples(
  bytes: Uint8Array,
  count: number,
  layout: SampleLayout,
): Float64Array | Float32Array | Int16Array {
  const { bytesPerSample, kind, littleEndian } = layout;
  if (
    littleEndian === isLittleEndianMachine &&
    (kind === 'float') === (bytesPerSample === 4) &&
    (kind === 'float' || (kind === 'signed' && bytesPerSample === 2))
  ) {
    // The machine's own order: copied as it is, which matters for grids of many millions. (Node's own buffers share memory when sliced.)
    const copy = new Uint8Array(bytes.subarray(0, count * bytesPerSample)).buffer;
    return kind === 'float' ? new Float32Array(copy) : new Int16Array(copy);
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (kind === 'float' && bytesPerSample === 4) {
    const samples = new Float32Array(count);
    for (let index = 0; index < count; index++) samples[index] = view.getFloat32(4 * index, littleEndian);
    return samples;
  }
  if (kind === 'signed' && bytesPerSample === 2) {
    const samples = new Int16Array(count);
    for (let index = 0; index < count; index++) samples[index] = view.getInt16(2 * index, littleEndian);
    return samples;
  }
  const read: Record<string, (at: number) => number> = {
    float8: (at) => view.getFloat64(at, littleEndian),
    signed1: (at) => view.getInt8(at),
    signed4: (at) => view.getInt32(at, littleEndian),
    unsigned1: (at) => view.getUint8(at),
    unsigned2: (at) => view.getUint16(at, littleEndian),
    unsigned4: (at) => view.getUint32(at, littleEndian),
  };
  const readOne = read[`${kind}${bytesPerSample}`];
  const samples = new Float64Array(count);
  if (readOne) for (let index = 0; index < count; index++) samples[index] = readOne(bytesPerSample * index);
  return samples;
}

function sumAlongRows(
  samples: Float64Array | Float32Array | Int16Array,
  columns: number,
  rows: number,
  layout: SampleLayout,
): void {
  const span = 2 ** (8 * layout.bytesPerSample);
  const wrap = (sum: number) => {
    const within = ((sum % span) + span) % span;
    return layout.kind === 'signed' && within >= span / 2 ? within - span : within;
  };
  for (let row = 0; row < rows; row++) {
    for (let at = row * columns + 1; at < (row + 1) * columns; at++) {
      samples[at] = wrap((samples[at] ?? 0) + (samples[at - 1] ?? 0));
    }
  }
}

function floatsOfPredictor3(
  bytes: Uint8Array,
  columns: number,
  rows: number,
  { bytesPerSample }: SampleLayout,
): Float32Array {
  const samples = new Float32Array(columns * rows);
  const rowBytes = columns * bytesPerSample;
  const summed = new Uint8Array(rowBytes);
  const one = new DataView(new ArrayBuffer(8));
  for (let row = 0; row < rows; row++) {
    let sum = 0;
    for (let at = 0; at < rowBytes; at++) {
      sum = (sum + (bytes[row * rowBytes + at] ?? 0)) & 0xff;
      summed[at] = sum;
    }
    for (let column = 0; column < columns; column++) {
      // Most significant bytes of the whole row come first, whatever the order of the file.
      for (let byte = 0; byte < bytesPerSample; byte++)
        one.setUint8(byte, summed[byte * columns + column] ?? 0);
      samples[row * columns + column] = bytesPerSample === 4 ? one.getFloat32(0) : one.getFloat64(0);
    }
  }
  return samples;
}

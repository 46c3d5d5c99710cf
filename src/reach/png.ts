/**
 * A picture as the bytes of a PNG file: eight bits each of red, green and blue. The same picture gives the same bytes; no date is written.
 * Source: PNG Specification, W3C Recommendation (Second Edition, 2003), sections 5, 9 and 11; CRC in its annex D.
 */
import { deflateSync } from 'node:zlib';

export interface Picture {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Three bytes a pixel, row by row from the top. */
  readonly rgb: Uint8Array;
}

export function writePng({ widthPx, heightPx, rgb }: Picture): Uint8Array {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, widthPx);
  view.setUint32(4, heightPx);
  header.set([8, 2, 0, 0, 0], 8);
  // Each row begins with the number of its filter: 0, none.
  const stride = 3 * widthPx;
  const filtered = new Uint8Array((stride + 1) * heightPx);
  for (let row = 0; row < heightPx; row++)
    filtered.set(rgb.subarray(row * stride, (row + 1) * stride), row * (stride + 1) + 1);
  const chunks = [
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(filtered, { level: 6 })),
    chunk('IEND', new Uint8Array(0)),
  ];
  const signature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
  const bytes = new Uint8Array(signature.length + chunks.reduce((sum, { length }) => sum + length, 0));
  bytes.set(signature);
  let at = signature.length;
  for (const each of chunks) {
    bytes.set(each, at);
    at += each.length;
  }
  return bytes;
}

function chunk(type: string, content: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(content.length + 12);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, content.length);
  for (let index = 0; index < 4; index++) bytes[4 + index] = type.charCodeAt(index);
  bytes.set(content, 8);
  view.setUint32(content.length + 8, crc32(bytes.subarray(4, content.length + 8)));
  return bytes;
}

const crcTable = Uint32Array.from({ length: 256 }, (_, index) => {
  let crc = index;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? 0xedb88320 ^ (crc >>> 1) : crc >>> 1;
  return crc;
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crcTable[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

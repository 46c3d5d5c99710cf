/** Grey pictures as PNG (ISO/IEC 15948), eight bits a pixel: enough to keep accepted pages and to read them back. */
import { crc32, deflateSync, inflateSync } from 'node:zlib';

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** A byte a pixel, 0 black to 255 white, row by row. */
  readonly greys: Uint8Array;
}

const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

export function writePng({ width, height, greys }: Picture): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y += 1)
    rows.set(greys.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** Reads what {@link writePng} wrote, and no other kind. */
export function readPng(bytes: Buffer): Picture {
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  const parts: Buffer[] = [];
  for (let at = 8; at < bytes.length; ) {
    const length = bytes.readUInt32BE(at);
    if (bytes.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(bytes.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  const rows = inflateSync(Buffer.concat(parts));
  const greys = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1)
    greys.set(rows.subarray(y * (width + 1) + 1, (y + 1) * (width + 1)), y * width);
  return { width, height, greys };
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}

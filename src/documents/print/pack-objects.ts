/**
 * Many small objects in few streams, and the table of objects that finds them there: ISO 32000-1:2008, 7.5.7
 * "Object streams" and 7.5.8 "Cross-reference streams". The structure of a thousand cards is tens of thousands of
 * objects much like each other; packed they take a tenth of the room, and less time than written out.
 */
import { deflate, deflateSync } from 'node:zlib';
import type { Inside } from './inside-pdfkit.ts';

/** Packs objects; hand them over in the order of their numbers, then finish. */
export interface Packer {
  /** The number of the first of so many objects that are to be packed. */
  reserve(count: number): number;
  add(number: number, text: string): void;
  /** Writes the streams, and sees to it that the file ends with a table that knows them. */
  finish(): Promise<void>;
}

/** Enough that the streams deflate well, few enough that a viewer need not unpack all to look at one. */
const mostInStream = 400;

/** Deflates on another thread. */
export function deflated(bytes: Uint8Array): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    deflate(bytes, (error, packed) => (error === null ? resolve(packed) : reject(error)));
  });
}

export function packerOf(document: Inside): Packer {
  const streams: { numbers: number[]; texts: string[] }[] = [];
  return {
    reserve(count) {
      const first = document._offsets.length + 1;
      for (let made = 0; made < count; made += 1) document._offsets.push(null);
      return first;
    },
    add(number, text) {
      let last = streams.at(-1);
      if (last === undefined || last.numbers.length === mostInStream) {
        last = { numbers: [], texts: [] };
        streams.push(last);
      }
      last.numbers.push(number);
      last.texts.push(text);
    },
    async finish() {
      const packed = await Promise.all(streams.map(({ numbers, texts }) => packedStream(numbers, texts)));
      /** For each packed object, the number of its stream and its place in it. */
      const places = new Map<number, readonly [stream: number, place: number]>();
      packed.forEach(({ first, bytes }, index) => {
        const numbers = streams[index]?.numbers ?? [];
        const reference = document.ref({
          Type: 'ObjStm',
          N: numbers.length,
          First: first,
          Filter: 'FlateDecode',
        });
        reference.end(bytes);
        numbers.forEach((number, place) => {
          places.set(number, [reference.id, place]);
        });
      });
      document._finalize = () => writeTable(document, places);
    },
  };
}

async function packedStream(
  numbers: readonly number[],
  texts: readonly string[],
): Promise<{ readonly first: number; readonly bytes: Uint8Array }> {
  let offset = 0;
  let index = '';
  numbers.forEach((number, place) => {
    index += `${number} ${offset} `;
    offset += (texts[place] ?? '').length + 1;
  });
  return {
    first: index.length,
    bytes: await deflated(Buffer.from(`${index}${texts.join('\n')}\n`, 'latin1')),
  };
}

/** Kind, place and a second figure of each object: one, four and two bytes (table 18). */
const entryBytes = 7;

function writeTable(document: Inside, places: ReadonlyMap<number, readonly [number, number]>): void {
  const start = document._offset;
  const own = document._offsets.length + 1;
  const entries = new Uint8Array(entryBytes * (own + 1));
  const view = new DataView(entries.buffer);
  const enter = (number: number, kind: number, first: number, second: number): void => {
    view.setUint8(entryBytes * number, kind);
    view.setUint32(entryBytes * number + 1, first);
    view.setUint16(entryBytes * number + 5, second);
  };
  enter(0, 0, 0, 0xffff);
  document._offsets.forEach((offset, index) => {
    const place = places.get(index + 1);
    if (place !== undefined) enter(index + 1, 2, ...place);
    else if (offset !== null) enter(index + 1, 1, offset, 0);
  });
  enter(own, 1, start, 0);
  const bytes = deflateSync(entries);
  const id = Buffer.from(document._id).toString('hex');
  document._write(
    `${own} 0 obj\n<< /Type /XRef /Size ${own + 1} /W [1 4 2] /Root ${document._root} /Info ${document._info} /ID [<${id}> <${id}>] /Filter /FlateDecode /Length ${bytes.length} >>\nstream`,
  );
  document._write(bytes);
  document._write(`\nendstream\nendobj\nstartxref\n${start}\n%%EOF`);
  document.push(null);
}

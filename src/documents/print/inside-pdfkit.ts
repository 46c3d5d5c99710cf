/**
 * The parts of pdfkit 0.20.2 that its types do not show.
 *
 * pdfkit keeps the frame of the file: catalogue, information, metadata, outline, colour profile. Pages, fonts and the
 * structure are written here, because pdfkit measures each text again and gives each part of the structure
 * several objects of its own, which would cost more than all the rest.
 */

/** An object of the file with a number of its own; in a text it stands as a reference to itself. */
export interface Reference {
  readonly id: number;
  readonly data: { [key: string]: unknown };
  /** Adds to the object's stream, which is deflated unless `data` says that it already is (`Filter`). */
  write(bytes: Uint8Array): void;
  end(bytes?: Uint8Array): void;
  toString(): string;
}

export interface OutlineItem {
  readonly children: readonly OutlineItem[];
  readonly outlineData: { Count?: number };
  addItem(title: string, options: { readonly pageNumber: number }): OutlineItem;
}

export interface Inside {
  readonly outline: OutlineItem;
  readonly info: { Title?: string; Subject?: string; Author?: string };
  readonly _root: Reference & {
    readonly data: {
      readonly Pages: Reference & { readonly data: { Count: number; readonly Kids: Reference[] } };
      readonly ViewerPreferences: Reference;
    };
  };
  readonly _info: Reference;
  readonly _id: Uint8Array;
  /** Where each object begins, by its number less one; null until it is written. */
  readonly _offsets: (number | null)[];
  /** Length of what is written. */
  readonly _offset: number;
  ref(data?: object): Reference;
  getStructTreeRoot(): Reference;
  appendXML(xml: string): void;
  _addInfo(): void;
  /** Writes a piece of the file; a text is Latin-1 and gets a line end. */
  _write(piece: string | Uint8Array): void;
  /** Writes the table of objects and the end of the file. */
  _finalize(): void;
  push(chunk: Uint8Array | null): boolean;
  read(): Uint8Array;
  end(): void;
}

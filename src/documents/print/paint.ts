/**
 * Pages → PDF. Walks the items and draws them where they stand; it never measures, wraps or decides.
 *
 * The file is tagged (ISO 32000-1:2008, 14.7 and 14.8) and carries the marks of PDF/UA-1 (ISO 14289-1) and
 * PDF/A-2a (ISO 19005-2). What a machine can check of the two is checked on every document by other programs
 * (`test/documents/pdf`); no validator of PDF/UA or PDF/A-2 was at hand. Only embedded fonts are used. The
 * same pages and the same date give the same bytes.
 */
import { type DrawnPage, drawPage } from './draw-page.ts';
import { embedFont } from './embed-font.ts';
import type { Fonts } from './fonts.ts';
import type { Inside, OutlineItem, Reference } from './inside-pdfkit.ts';
import { deflated, packerOf } from './pack-objects.ts';
import type { LaidOut, Page } from './page.ts';
import { shownFonts } from './show-text.ts';
import { tagStructure } from './tag-structure.ts';

export interface PaintOptions {
  readonly fonts: Fonts;
  /** Stands in the file as the date it was made: the plan's, never the clock's. */
  readonly date: Date;
  readonly subject?: string;
  readonly author?: string;
}

export async function paint(laid: LaidOut, options: PaintOptions): Promise<Uint8Array> {
  const { default: PDFDocument } = await import('pdfkit');
  const made = new PDFDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    subset: 'PDF/A-2a',
    tagged: true,
    lang: laid.language,
    displayTitle: true,
    info: {
      Title: laid.title,
      Creator: 'readback',
      Producer: 'readback, with PDFKit',
      CreationDate: options.date,
      ...(options.subject === undefined ? {} : { Subject: options.subject }),
      ...(options.author === undefined ? {} : { Author: options.author }),
    },
  });
  // The types of pdfkit leave these members out; see Inside.
  const document = made as unknown as Inside;
  // pdfkit is a stream; taking its pieces here, after the first lines it has written already, spares a copy of each.
  const chunks: Uint8Array[] = [document.read()];
  document.push = (chunk) => {
    if (chunk !== null) chunks.push(chunk);
    return true;
  };
  setUp(document, laid);
  const packer = packerOf(document);

  const fonts = shownFonts(options.fonts);
  const drawn = laid.pages.map((page) => {
    const { operators, owners } = drawPage(page, laid.structure, fonts);
    // Deflated beside the work on the next pages.
    return { page, owners, operators: '', content: deflated(Buffer.from(operators, 'latin1')) };
  });
  const resources = document.ref({});
  const written: (DrawnPage & { page: Page; reference: Reference })[] = [];
  for (const [index, { content, ...page }] of drawn.entries()) {
    const stream = document.ref({ Filter: 'FlateDecode' });
    stream.end(await content);
    written.push({ ...page, reference: addPage(document, page.page, index, stream, resources) });
  }
  const embedded = [...fonts.used].map(([name, glyphs], index) => [
    fonts.nameOf(name),
    embedFont(document, options.fonts.font(name), glyphs, index),
  ]);
  resources.data['Font'] = Object.fromEntries(embedded);
  resources.end();
  addOutline(document, laid);
  tagStructure(document, packer, laid.structure, written);
  await packer.finish();
  document.end();
  return joined(chunks);
}

function addPage(
  document: Inside,
  page: Page,
  index: number,
  content: Reference,
  resources: Reference,
): Reference {
  const pages = document._root.data.Pages;
  const reference = document.ref({
    Type: 'Page',
    Parent: pages,
    MediaBox: [0, 0, page.widthPt, page.heightPt],
    Contents: content,
    Resources: resources,
    StructParents: index,
    Tabs: 'S',
  });
  pages.data.Kids.push(reference);
  pages.data.Count += 1;
  reference.end();
  return reference;
}

function addOutline(document: Inside, laid: LaidOut): void {
  const levels: OutlineItem[] = [document.outline];
  for (const heading of laid.outline) {
    levels.length = Math.min(levels.length, heading.level);
    const parent = levels.at(-1);
    if (parent !== undefined) levels.push(parent.addItem(heading.text, { pageNumber: heading.page }));
  }
  countOutline(document.outline, 2);
}

/**
 * Counts what each entry of the outline holds, as tables 152 and 153 of ISO 32000-1 ask: the entries to be seen when it
 * is open, negative where it is closed. Those of the first `open` levels are open, the whole being the first.
 *
 * @returns how many entries are seen below
 */
function countOutline(item: OutlineItem, open: number): number {
  const seen = item.children.reduce((sum, child) => sum + 1 + countOutline(child, open - 1), 0);
  if (item.children.length > 0) item.outlineData.Count = open > 0 ? seen : -seen;
  return open > 0 ? seen : 0;
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** PDF/A asks that a property from outside XMP is described in the file (ISO 19005-2, 6.6.2.3.3): here that of PDF/UA. */
const describedUa =
  '<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">' +
  '<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">' +
  '<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>' +
  '<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>' +
  '<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>' +
  '<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">' +
  '<pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType>' +
  '<pdfaProperty:category>internal</pdfaProperty:category>' +
  '<pdfaProperty:description>Which part of ISO 14289 the file follows</pdfaProperty:description>' +
  '</rdf:li></rdf:Seq></pdfaSchema:property></rdf:li></rdf:Bag></pdfaExtension:schemas></rdf:Description>';

function setUp(document: Inside, laid: LaidOut): void {
  const preferences = document._root.data.ViewerPreferences.data;
  // Asks viewers not to shrink the sheet (ISO 32000-1, table 150); some do all the same, hence the ruler on it.
  preferences['PrintScaling'] = 'None';
  if (laid.flip !== undefined)
    preferences['Duplex'] = laid.flip === 'long-edge' ? 'DuplexFlipLongEdge' : 'DuplexFlipShortEdge';
  const addInfo = document._addInfo.bind(document);
  // pdfkit puts title and subject into the XML metadata as they are; the plain ones have been written by then.
  document._addInfo = () => {
    for (const key of ['Title', 'Subject', 'Author'] as const) {
      const plain = document.info[key];
      if (plain !== undefined)
        document.info[key] = plain.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
    }
    document.appendXML(describedUa);
    document.appendXML(
      '<rdf:Description xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" rdf:about=""><pdfuaid:part>1</pdfuaid:part></rdf:Description>',
    );
    addInfo();
  };
}

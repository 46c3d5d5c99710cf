/**
 * Pages → PDF. Walks the items and draws them where they stand; it never measures, wraps or decides.
 *
 * The file is tagged (ISO 32000-1:2008, 14.7 and 14.8) and carries the marks of PDF/UA-1 (ISO 14289-1) and
 * PDF/A-2a (ISO 19005-2). What a machine can check of the two is checked on every document by other programs
 * (`test/documents/pdf`); no validator of PDF/UA or PDF/A-2 was at hand. Only embedded fonts are used. The
 * same pages and the same date give the same bytes.
 *
 * Text operators are written here rather than through pdfkit's `text()`, which measures each text again:
 * that would cost more than all the rest. What this needs of pdfkit's inside is {@link Inside}.
 */
import type { FontName, FontSource, Fonts, OpenFont } from './fonts.ts';
import { advances } from './measure.ts';
import type {
  CircleItem,
  GroupItem,
  Item,
  LaidOut,
  LineItem,
  PolygonItem,
  Running,
  StructureNode,
  TextItem,
} from './page.ts';

export interface PaintOptions {
  readonly fonts: Fonts;
  /** Stands in the file as the date it was made: the plan's, never the clock's. */
  readonly date: Date;
  readonly subject?: string;
  readonly author?: string;
}

interface EmbeddedFont {
  readonly id: string;
  readonly subset: { includeGlyph(id: number): number };
  readonly widths: (number | undefined)[];
  readonly unicode: (readonly number[] | undefined)[];
  ref(): unknown;
}

interface StructureElement {
  readonly dictionary: { readonly data: { [key: string]: unknown } };
  add(child: unknown): void;
  end(): void;
}

/** The parts of pdfkit 0.20.2 that its types do not show. */
interface Inside {
  readonly _font: EmbeddedFont;
  readonly page: {
    readonly height: number;
    readonly fonts: { [id: string]: unknown };
    readonly markings: { readonly tag: string }[];
  };
  readonly outline: OutlineItem;
  readonly info: { Title?: string; Subject?: string; Author?: string };
  readonly _root: {
    readonly data: { readonly ViewerPreferences: { readonly data: { [key: string]: unknown } } };
  };
  _addInfo(): void;
  addContent(text: string): void;
  font(source: FontSource): void;
  struct(role: string, options: { readonly alt?: string; readonly lang?: string }): StructureElement;
  addStructure(element: StructureElement): void;
  getStructParentTree(): { limits: boolean };
  markStructureContent(role: string): unknown;
  markContent(tag: string, options: { readonly type: string }): void;
  endMarkedContent(): void;
  appendXML(xml: string): void;
}

interface OutlineItem {
  readonly children: readonly OutlineItem[];
  readonly outlineData: { Count?: number };
  addItem(title: string): OutlineItem;
}

interface Painter {
  readonly document: Inside;
  readonly structure: readonly StructureNode[];
  readonly elements: (StructureElement | undefined)[];
  readonly fonts: Fonts;
  readonly embedded: Map<FontName, EmbeddedFont>;
  /** Texts already turned into glyphs. */
  readonly shown: Map<string, string>;
  /** What the text being drawn belongs to: a part of the structure, an artifact, or nothing yet. */
  open: number | 'artifact' | Running | undefined;
}

export async function paint(laid: LaidOut, options: PaintOptions): Promise<Uint8Array> {
  const { default: PDFDocument } = await import('pdfkit');
  const document = new PDFDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    subset: 'PDF/A-2a',
    tagged: true,
    lang: laid.language,
    displayTitle: true,
    margin: 0,
    info: {
      Title: laid.title,
      Creator: 'readback',
      Producer: 'readback, with PDFKit',
      CreationDate: options.date,
      ...(options.subject === undefined ? {} : { Subject: options.subject }),
      ...(options.author === undefined ? {} : { Author: options.author }),
    },
  });
  // pdfkit is a stream; taking its pieces here, after the first lines it has written already, spares a copy of each.
  const chunks: Uint8Array[] = [document.read()];
  document.push = (chunk: Uint8Array | null): boolean => {
    if (chunk !== null) chunks.push(chunk);
    return true;
  };

  // The types of pdfkit leave these members out; see Inside.
  const inside = document as unknown as Inside;
  setUp(inside, laid);
  const painter: Painter = {
    document: inside,
    structure: laid.structure,
    elements: [],
    fonts: options.fonts,
    embedded: new Map(),
    shown: new Map(),
    open: undefined,
  };
  const root = elementOf(painter, 0);
  inside.addStructure(root);
  const levels: OutlineItem[] = [inside.outline];
  laid.pages.forEach((page, index) => {
    document.addPage({ size: [page.widthPt, page.heightPt], margin: 0 });
    for (const item of page.items) drawItem(painter, item);
    close(painter);
    for (const heading of laid.outline) {
      if (heading.page !== index) continue;
      levels.length = Math.min(levels.length, heading.level);
      const parent = levels.at(-1);
      if (parent !== undefined) levels.push(parent.addItem(heading.text));
    }
  });
  // Parts without anything drawn, such as empty cells, still belong to their row.
  elementOf(painter, laid.structure.length - 1);
  root.end();
  countOutline(inside.outline, 2);
  document.end();
  return joined(chunks);
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
  // A tree of a single node has none (ISO 32000-1, table 37).
  document.getStructParentTree().limits = false;
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

/** The element of a part; all earlier parts are made first, so that they stand in reading order. */
function elementOf(painter: Painter, node: number): StructureElement {
  for (let index = painter.elements.length; index <= node; index += 1) {
    const part = painter.structure[index];
    if (part === undefined)
      throw new Error(`The pages point to part ${index} of a structure of ${painter.structure.length}.`);
    const element = painter.document.struct(part.role, {
      ...(part.alt !== undefined && { alt: part.alt }),
      ...(part.language !== undefined && { lang: part.language }),
    });
    const table: { [key: string]: unknown } = {
      ...(part.scope === undefined ? {} : { Scope: part.scope }),
      ...(part.colSpan === undefined ? {} : { ColSpan: part.colSpan }),
      ...(part.rowSpan === undefined ? {} : { RowSpan: part.rowSpan }),
    };
    if (Object.keys(table).length > 0) element.dictionary.data['A'] = { O: 'Table', ...table };
    if (part.box !== undefined) {
      // Parts are made when the first of them is drawn, so the page is the one they stand on; its y runs up.
      const { height } = painter.document.page;
      const [left, top, right, bottom] = part.box;
      element.dictionary.data['A'] = {
        O: 'Layout',
        Placement: 'Block',
        BBox: [left, height - bottom, right, height - top],
      };
    }
    painter.elements.push(element);
    if (part.parent !== undefined) painter.elements[part.parent]?.add(element);
  }
  const element = painter.elements[node];
  if (element === undefined) throw new Error(`Part ${node} of the structure was not made.`);
  return element;
}

function close(painter: Painter): void {
  if (painter.open !== undefined) painter.document.endMarkedContent();
  painter.open = undefined;
}

function belongTo(painter: Painter, { node, running }: Exclude<Item, GroupItem>): void {
  const wanted = node ?? running ?? 'artifact';
  if (painter.open === wanted) return;
  close(painter);
  if (wanted === 'artifact') painter.document.markContent('Artifact', { type: 'Layout' });
  else if (wanted === 'Header' || wanted === 'Footer') {
    // pdfkit leaves the subtype out, without which nobody knows which of the two it is (ISO 14289-1, 7.8).
    painter.document.page.markings.push({ tag: 'Artifact' });
    painter.document.addContent(`/Artifact <</Type /Pagination /Subtype /${wanted}>> BDC`);
  } else {
    const element = elementOf(painter, wanted);
    element.add(painter.document.markStructureContent(painter.structure[wanted]?.role ?? 'P'));
  }
  painter.open = wanted;
}

function drawItem(painter: Painter, item: Item): void {
  if (item.kind === 'group') {
    drawGroup(painter, item);
    return;
  }
  belongTo(painter, item);
  switch (item.kind) {
    case 'text':
      drawText(painter, item);
      break;
    case 'line':
      painter.document.addContent(drawLine(item));
      break;
    case 'polygon':
      painter.document.addContent(drawPolygon(item));
      break;
    case 'circle':
      painter.document.addContent(drawCircle(item));
      break;
  }
}

function drawGroup(painter: Painter, group: GroupItem): void {
  close(painter);
  const [cos, sin] = ({ 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const)[group.turn];
  const [halfWidth, halfHeight] = [group.widthPt / 2, group.heightPt / 2];
  const e = group.x + halfWidth - cos * halfWidth + sin * halfHeight;
  const f = group.y + halfHeight - sin * halfWidth - cos * halfHeight;
  painter.document.addContent(`q ${cos} ${sin} ${-sin} ${cos} ${n(e)} ${n(f)} cm`);
  for (const item of group.items) drawItem(painter, item);
  close(painter);
  painter.document.addContent('Q');
}

function drawText(painter: Painter, item: TextItem): void {
  const open = painter.fonts.font(item.font);
  let embedded = painter.embedded.get(item.font);
  if (embedded === undefined) {
    painter.document.font(open.source);
    embedded = painter.document._font;
    painter.embedded.set(item.font, embedded);
  }
  painter.document.page.fonts[embedded.id] ??= embedded.ref();
  const key = `${embedded.id} ${item.text}`;
  let shown = painter.shown.get(key);
  if (shown === undefined) {
    shown = encode(open, embedded, item.text);
    painter.shown.set(key, shown);
  }
  // The page's y runs down; the letters' own matrix turns them upright again.
  let content = `BT /${embedded.id} ${n(item.sizePt)} Tf 1 0 0 -1 ${n(item.x)} ${n(item.y)} Tm [<${shown}>] TJ ET`;
  for (const middle of item.zeros) content += `\n${zeroStroke(item.x + middle, item.y, item.sizePt)}`;
  painter.document.addContent(content);
}

/** The glyphs of a text and what they are set closer by, as `TJ` takes them; each glyph joins the embedded font. */
function encode(open: OpenFont, embedded: EmbeddedFont, text: string): string {
  const steps = advances(open, text);
  let shown = '';
  let index = 0;
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const { id, advance } = open.glyph(codePoint);
    const glyph = embedded.subset.includeGlyph(id);
    embedded.widths[glyph] ??= advance * 1000;
    embedded.unicode[glyph] ??= [codePoint];
    shown += glyph.toString(16).padStart(4, '0');
    const kern = (steps[index] ?? advance) - advance;
    if (kern !== 0) shown += `> ${n(-kern * 1000)} <`;
    index += 1;
  }
  return shown;
}

/** A stroke inside the zero, clear of its outline, so that it is neither an O nor an Ø. */
function zeroStroke(x: number, y: number, sizePt: number): string {
  return `${n(0.062 * sizePt)} w ${n(x - 0.075 * sizePt)} ${n(y - 0.25 * sizePt)} m ${n(x + 0.075 * sizePt)} ${n(y - 0.5 * sizePt)} l S`;
}

function path(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], index) => `${n(x)} ${n(y)} ${index === 0 ? 'm' : 'l'}`).join(' ');
}

function drawLine(item: LineItem): string {
  const dash = item.dashPt === undefined ? ['', ''] : [`[${item.dashPt.map(n).join(' ')}] 0 d `, ' [] 0 d'];
  const grey = item.grey === undefined ? ['', ''] : [`${n(item.grey)} G `, ' 0 G'];
  return `${grey[0]}${dash[0]}${n(item.widthPt)} w ${path(item.points)} S${dash[1]}${grey[1]}`;
}

function drawPolygon(item: PolygonItem): string {
  return fillAndStroke(`${path(item.points)} h`, item);
}

/** Four Bézier curves; 0.5523 puts them within 0.03 % of the circle. */
function drawCircle(item: CircleItem): string {
  const { x, y, radiusPt: r } = item;
  const k = 0.5523 * r;
  const curve = (...values: number[]): string => `${values.map(n).join(' ')} c`;
  const outline = [
    `${n(x + r)} ${n(y)} m`,
    curve(x + r, y + k, x + k, y + r, x, y + r),
    curve(x - k, y + r, x - r, y + k, x - r, y),
    curve(x - r, y - k, x - k, y - r, x, y - r),
    curve(x + k, y - r, x + r, y - k, x + r, y),
  ].join(' ');
  return fillAndStroke(`${outline} h`, item);
}

function fillAndStroke(
  outline: string,
  item: { readonly fill?: number; readonly strokePt?: number },
): string {
  const fill = item.fill === undefined ? ['', ''] : [`${n(item.fill)} g `, ' 0 g'];
  const width = item.strokePt === undefined ? '' : `${n(item.strokePt)} w `;
  const operator = item.fill === undefined ? 'S' : item.strokePt === undefined ? 'f' : 'B';
  return `${fill[0]}${width}${outline} ${operator}${fill[1]}`;
}

function n(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/**
 * Conditions of PDF/UA-1 (ISO 14289-1:2014) and PDF/A-2 (ISO 19005-2:2011) that a machine can check, each with its
 * clause and, for PDF/UA, the failure condition of the Matterhorn Protocol 1.1 (PDF Association) that says the same.
 *
 * Clauses and conditions are cited from memory of these texts, which were not at hand; what they ask for was not
 * invented here. Whether words are right (reading order, alternative texts, headings that head something) needs a
 * person, and is not among them.
 */
import {
  catalog,
  type Dictionary,
  dictionary,
  drawnOn,
  follow,
  inside,
  list,
  type Part,
  type Pdf,
  pagesOf,
  structureOf,
  type Value,
  words,
} from './read-pdf.ts';

export interface PdfCheck {
  readonly clause: string;
  /** The condition that must hold. */
  readonly says: string;
  /** What breaks it. */
  flaws(pdf: Pdf): readonly string[];
  /** Breaks it. */
  spoil(pdf: Pdf): void;
}

const ua = (clause: string, matterhorn: string) => `ISO 14289-1, ${clause} (Matterhorn ${matterhorn})`;
const a2 = (clause: string) => `ISO 19005-2, ${clause}`;

export const pdfChecks: readonly PdfCheck[] = [
  {
    clause: ua('7.1', '01-005'),
    says: 'All that is painted is tagged or an artifact.',
    flaws: (pdf) =>
      eachPage(pdf, ({ painted }) =>
        painted
          .filter(({ marked }) => !marked.some(({ tag, mcid }) => tag === 'Artifact' || mcid !== undefined))
          .map(({ operator }) => `${operator} stands in neither`),
      ),
    spoil: (pdf) => onFirstPage(pdf, (content) => `${content}\n0 0 m 9 9 l S`),
  },
  {
    clause: ua('7.1', '01-003 and 01-004'),
    says: 'No artifact stands in tagged content, and no tagged content in an artifact.',
    flaws: (pdf) =>
      eachPage(pdf, ({ markings }) =>
        markings
          .filter(({ marking, within }) =>
            marking.tag === 'Artifact'
              ? within.some(({ mcid }) => mcid !== undefined)
              : within.some(({ tag }) => tag === 'Artifact'),
          )
          .map(({ marking }) => `${marking.tag} stands in the other kind`),
      ),
    spoil: (pdf) => onFirstPage(pdf, (content) => `/Artifact BMC\n${content}\nEMC`),
  },
  {
    clause: ua('7.1', '01-007'),
    says: 'The document is marked as tagged, and its tags are not suspect.',
    flaws: (pdf) => {
      const marks = dictionary(inside(pdf, catalog(pdf)['/MarkInfo']));
      return marks['/Marked'] === true && marks['/Suspects'] !== true ? [] : [JSON.stringify(marks)];
    },
    spoil: (pdf) => {
      dictionary(inside(pdf, catalog(pdf)['/MarkInfo']))['/Suspects'] = true;
    },
  },
  {
    clause: 'ISO 32000-1, 14.7.4.4; ISO 14289-1, 7.1',
    says: 'Every piece of tagged content belongs to one part of the structure, and the parent tree leads there.',
    flaws: parentTreeFlaws,
    spoil: (pdf) => {
      const nums = list(inside(pdf, catalog(pdf)['/StructTreeRoot'], '/ParentTree', '/Nums'));
      list(follow(pdf, nums[1])).reverse();
    },
  },
  {
    clause: 'ISO 32000-1, 7.9.7, table 37',
    says: 'The parent tree is a tree: at its root it has either numbers or branches, and no limits.',
    flaws: (pdf) => {
      const tree = dictionary(inside(pdf, catalog(pdf)['/StructTreeRoot'], '/ParentTree'));
      const one = (tree['/Nums'] === undefined) !== (tree['/Kids'] === undefined);
      return one && tree['/Limits'] === undefined ? [] : [Object.keys(tree).join(' ')];
    },
    spoil: (pdf) => {
      dictionary(inside(pdf, catalog(pdf)['/StructTreeRoot'], '/ParentTree'))['/Limits'] = [0, 1];
    },
  },
  {
    clause: 'ISO 32000-1, 14.7.2',
    says: 'Every part of the structure names its parent.',
    flaws: (pdf) =>
      structureOf(pdf)
        .filter(({ parent, dictionary: own }) =>
          parent === undefined
            ? own['/P'] !== catalog(pdf)['/StructTreeRoot']
            : own['/P'] !== parent.reference,
        )
        .map(({ role, reference }) => `${role} ${reference}`),
    spoil: (pdf) => {
      const [, second] = structureOf(pdf);
      if (second) second.dictionary['/P'] = second.reference;
    },
  },
  {
    clause: ua('7.1', '02-001'),
    says: 'Every role is one of ISO 32000-1, 14.8.4, and none is mapped to another.',
    flaws: (pdf) => [
      ...structureOf(pdf)
        .filter(({ role }) => !standardRoles.has(role))
        .map(({ role }) => role),
      ...Object.keys(dictionary(inside(pdf, catalog(pdf)['/StructTreeRoot'], '/RoleMap'))),
    ],
    spoil: (pdf) => spoilPart(pdf, 'P', '/S', '/Paragraph'),
  },
  {
    clause: ua('7.1', '06-001, 06-002 and 06-003'),
    says: 'The metadata say that it is PDF/UA-1, and have its title.',
    flaws: (pdf) => {
      const xmp = metadata(pdf);
      const title = /<dc:title>\s*<rdf:Alt>\s*<rdf:li[^>]*>([^<]+)</.exec(xmp)?.[1];
      return [
        ...(/<pdfuaid:part>1<\/pdfuaid:part>/.test(xmp) ? [] : ['no pdfuaid:part']),
        ...(title === undefined ? ['no dc:title'] : []),
      ];
    },
    spoil: (pdf) => spoilMetadata(pdf, /<pdfuaid:part>1/, '<pdfuaid:part>'),
  },
  {
    clause: ua('7.1', '07-001 and 07-002'),
    says: 'A window shows the title.',
    flaws: (pdf) =>
      inside(pdf, catalog(pdf)['/ViewerPreferences'], '/DisplayDocTitle') === true ? [] : ['not shown'],
    spoil: (pdf) => {
      delete dictionary(inside(pdf, catalog(pdf)['/ViewerPreferences']))['/DisplayDocTitle'];
    },
  },
  {
    clause: ua('7.2', '09-004 to 09-006'),
    says: 'Tables, lists and their parts stand in each other as ISO 32000-1, 14.8.4.3 has it.',
    flaws: (pdf) =>
      structureOf(pdf).flatMap(({ role, parts, parent }) => {
        const may = kids[role];
        const mustBeIn = parents[role];
        return [
          ...(may === undefined
            ? []
            : parts.filter((part) => !may.includes(part.role)).map((part) => `${part.role} in ${role}`)),
          ...(mustBeIn === undefined || mustBeIn.includes(parent?.role ?? '')
            ? []
            : [`${role} in ${parent?.role}`]),
        ];
      }),
    spoil: (pdf) => spoilPart(pdf, 'TR', '/S', '/P'),
  },
  {
    clause: ua('7.2', '10-001; 31-027 and 31-028'),
    says: 'Every code that is shown stands for a character.',
    flaws: (pdf) =>
      eachFont(pdf, (font, shown) => {
        const map = toUnicode(pdf, font);
        return [...shown].flatMap((code) => {
          const meant = map.get(code);
          const bad = meant === undefined || /^(?:0000|feff|fffe)$/i.test(meant);
          return bad ? [`${font['/BaseFont']} code ${code}`] : [];
        });
      }),
    spoil: (pdf) => {
      for (const { data, dict } of pdf.streams.values())
        if (data.includes('beginbfrange') || data.includes('beginbfchar')) dict['spoilt'] = true;
      for (const stream of pdf.streams.values())
        if (stream.dict['spoilt'] === true) stream.data = stream.data.replace(/<[0-9a-f]{4}>/gi, '<0000>');
    },
  },
  {
    clause: ua('7.2', '11-001 to 11-006'),
    says: 'The document has a language, and so has every part that is in another.',
    flaws: (pdf) =>
      [catalog(pdf)['/Lang'], ...structureOf(pdf).flatMap(({ dictionary: own }) => own['/Lang'] ?? [])]
        .map(words)
        .filter((language) => !/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(language)),
    spoil: (pdf) => {
      delete catalog(pdf)['/Lang'];
    },
  },
  {
    clause: ua('7.3', '13-004'),
    says: 'Every figure, and every mark that says something, has words for who cannot see it; a figure has its place on the page.',
    flaws: (pdf) =>
      structureOf(pdf)
        .filter(({ role }) => role === 'Figure')
        .filter(
          ({ dictionary: own }) =>
            words(own['/Alt'] ?? own['/ActualText']) === '' || attribute(pdf, own, '/BBox') === undefined,
        )
        .map(({ reference }) => `Figure ${reference}`),
    spoil: (pdf) => spoilPart(pdf, 'Figure', '/Alt', null),
  },
  {
    clause: ua('7.4.2', '14-002 and 14-003'),
    says: 'Headings begin with the first level and leave none out on the way down.',
    flaws: (pdf) => {
      const levels = structureOf(pdf).flatMap(({ role }) => (/^H[1-6]$/.test(role) ? [Number(role[1])] : []));
      return levels.flatMap((level, at) =>
        level > (levels[at - 1] ?? 0) + 1
          ? [`H${level} after ${at === 0 ? 'nothing' : `H${levels[at - 1]}`}`]
          : [],
      );
    },
    spoil: (pdf) => spoilPart(pdf, 'H1', '/S', '/H3'),
  },
  {
    clause: ua('7.4.4', '14-006 and 14-007'),
    says: 'Headings have their level in their role.',
    flaws: (pdf) => structureOf(pdf).flatMap(({ role }) => (role === 'H' ? ['H'] : [])),
    spoil: (pdf) => spoilPart(pdf, 'H1', '/S', '/H'),
  },
  {
    clause: ua('7.5', '15-003'),
    says: 'Every heading of a table says whether it heads a row or a column.',
    flaws: (pdf) =>
      structureOf(pdf)
        .filter(({ role }) => role === 'TH')
        .filter(
          ({ dictionary: own }) => !/^\/(?:Row|Column|Both)$/.test(String(attribute(pdf, own, '/Scope'))),
        )
        .map(({ reference }) => `TH ${reference}`),
    spoil: (pdf) => spoilPart(pdf, 'TH', '/A', null),
  },
  {
    clause: 'ISO 32000-1, 14.8.4.3.4; ISO 14289-1, 7.5',
    says: 'All rows of a table are as wide, with what spans columns and rows.',
    flaws: (pdf) =>
      structureOf(pdf)
        .filter(({ role }) => role === 'Table')
        .flatMap((table) => irregular(pdf, table)),
    spoil: (pdf) => spoilPart(pdf, 'TD', '/A', { '/O': '/Table', '/ColSpan': 9 }),
  },
  {
    clause: ua('7.1', '01-006, as far as it is about parts without content'),
    says: 'A caption, a heading, an item and a paragraph hold something.',
    flaws: (pdf) =>
      structureOf(pdf)
        .filter(({ role }) => /^(?:Caption|H[1-6]|P|LI|LBody|Lbl|Figure)$/.test(role))
        .filter((part) => part.marks.length === 0 && below(part).every(({ marks }) => marks.length === 0))
        .map(({ role, reference, parent }) => `${role} ${reference} in ${parent?.role}`),
    spoil: (pdf) => spoilPart(pdf, 'H1', '/K', []),
  },
  {
    clause: ua('7.5', '15-001, as a person would look at it'),
    says: 'A table has something that heads its rows or columns; a list of contents is none.',
    flaws: (pdf) =>
      structureOf(pdf)
        .filter(({ role }) => role === 'Table')
        .filter((table) => !below(table).some(({ role }) => role === 'TH'))
        .map(({ reference, parts }) => `${reference} of ${parts.length} parts`),
    spoil: (pdf) => {
      for (const part of structureOf(pdf)) if (part.role === 'TH') part.dictionary['/S'] = '/TD';
    },
  },
  {
    clause: ua('7.8', '18-001 and 18-002'),
    says: 'What stands at the head or the foot of every page is an artifact of pagination, and says which.',
    flaws: (pdf) => {
      const kinds = pagesOf(pdf).flatMap((page) =>
        drawnOn(pdf, page).markings.flatMap(({ marking }) =>
          marking.type === 'Pagination' ? [marking.subtype] : [],
        ),
      );
      return kinds
        .filter((kind) => kind !== 'Header' && kind !== 'Footer')
        .map((kind) => `Pagination ${kind}`);
    },
    spoil: (pdf) => onFirstPage(pdf, (content) => `${content}\n/Artifact <</Type /Pagination>> BDC EMC`),
  },
  {
    clause: ua('7.18', '28-002 to 28-012'),
    says: 'There are no annotations, and tabs would follow the structure.',
    flaws: (pdf) =>
      pagesOf(pdf).flatMap(({ dictionary: page }) => [
        ...list(page['/Annots']).map(() => 'an annotation'),
        ...(page['/Tabs'] === '/S' ? [] : ['tabs']),
      ]),
    spoil: (pdf) => {
      for (const page of pagesOf(pdf)) page.dictionary['/Tabs'] = '/R';
    },
  },
  {
    clause: `${ua('7.21.3', '31-001 and 31-006')}; ${a2('6.2.11.3')}`,
    says: 'Composite fonts name their characters as their encoding does, and map them to the glyphs that are embedded.',
    flaws: (pdf) =>
      eachFont(pdf, (font) => {
        const inner = dictionary(follow(pdf, list(follow(pdf, font['/DescendantFonts']))[0]));
        const info = dictionary(inside(pdf, inner['/CIDSystemInfo']));
        return [
          ...(font['/Encoding'] === '/Identity-H' ? [] : ['encoding']),
          ...(words(info['/Registry']) === 'Adobe' && words(info['/Ordering']) === 'Identity'
            ? []
            : ['CIDSystemInfo']),
          ...(inner['/Subtype'] === '/CIDFontType2' && follow(pdf, inner['/CIDToGIDMap']) === null
            ? ['CIDToGIDMap']
            : []),
        ];
      }),
    spoil: (pdf) => {
      for (const value of pdf.values.values()) {
        const own = dictionary(value);
        if (own['/Subtype'] === '/Type0') own['/Encoding'] = '/WinAnsiEncoding';
      }
    },
  },
  {
    clause: `${ua('7.21.4.1', '31-009')}; ${a2('6.2.11.4.1')}`,
    says: 'Every font is embedded, as a subset under a name of its own.',
    flaws: (pdf) =>
      eachFont(pdf, (font) => {
        const inner = list(follow(pdf, font['/DescendantFonts'])).map((each) =>
          dictionary(follow(pdf, each)),
        );
        const [own = font] = inner;
        const descriptor = dictionary(inside(pdf, own['/FontDescriptor']));
        const program = descriptor['/FontFile2'] ?? descriptor['/FontFile3'] ?? descriptor['/FontFile'];
        return pdf.streams.has(String(program)) && /^\/[A-Z]{6}\+/.test(String(font['/BaseFont']))
          ? []
          : [String(font['/BaseFont'])];
      }),
    spoil: (pdf) => {
      for (const value of pdf.values.values()) {
        const own = dictionary(value);
        for (const key of ['/FontFile2', '/FontFile3']) delete own[key];
      }
    },
  },
  {
    clause: `${ua('7.21.8', '31-030')}; ${a2('6.2.11.8')}`,
    says: 'No glyph stands for a missing one.',
    flaws: (pdf) => eachFont(pdf, (font, shown) => (shown.has(0) ? [`${font['/BaseFont']}`] : [])),
    spoil: (pdf) => onFirstPage(pdf, (content) => content.replace(/\[<..../, '[<0000')),
  },
  {
    clause: a2('6.1.2 and 6.1.3'),
    says: 'The file has an id, and is not encrypted (ISO 14289-1, 7.16; Matterhorn 26-001 and 26-002).',
    flaws: ({ trailer }) => [
      ...(list(trailer['/ID']).length === 2 ? [] : ['no id']),
      ...(trailer['/Encrypt'] === undefined ? [] : ['encrypted']),
    ],
    spoil: ({ trailer }) => {
      delete trailer['/ID'];
    },
  },
  {
    clause: a2('6.1.7.1 and 6.1.7.2'),
    says: 'No stream lies in another file or is packed by LZW.',
    flaws: (pdf) =>
      [...pdf.streams.values()].flatMap(({ dict }) =>
        dict['/F'] !== undefined || list(dict['/Filter']).includes('/LZWDecode') ? ['a stream'] : [],
      ),
    spoil: (pdf) => {
      for (const { dict } of pdf.streams.values()) dict['/Filter'] = '/LZWDecode';
    },
  },
  {
    clause: a2('6.1.13'),
    says: 'Numbers, names, texts and nesting keep to the limits of a reader.',
    flaws: (pdf) => [
      ...eachPage(pdf, ({ depth }) =>
        depth < 0 ? ['marks or states do not pair'] : depth > 28 ? ['q'] : [],
      ),
      ...[...pdf.values.values(), ...[...pdf.streams.values()].map(({ dict }) => dict)].flatMap(beyondLimits),
    ],
    spoil: (pdf) => onFirstPage(pdf, (content) => `q\n${content}`),
  },
  {
    clause: a2('6.2.3 and 6.2.4.3'),
    says: 'There is one output intent with its profile, and colours are those of the device it names, or grey.',
    flaws: (pdf) => {
      const intents = list(follow(pdf, catalog(pdf)['/OutputIntents'])).map((each) =>
        dictionary(follow(pdf, each)),
      );
      const [intent] = intents;
      const profile = pdf.streams.get(String(intent?.['/DestOutputProfile']));
      const isProfile =
        profile?.dict['/N'] === 3 &&
        profile.data.slice(36, 40) === 'acsp' &&
        profile.data.slice(16, 20) === 'RGB ';
      const sound = intents.length === 1 && intent?.['/S'] === '/GTS_PDFA1' && isProfile;
      return [
        ...(sound ? [] : ['output intent']),
        ...eachPage(pdf, ({ operators }) =>
          ['k', 'K', 'cs', 'CS', 'sc', 'scn'].filter((each) => operators.has(each)),
        ),
      ];
    },
    spoil: (pdf) => {
      delete catalog(pdf)['/OutputIntents'];
    },
  },
  {
    clause: a2('6.2.2, 6.2.5, 6.2.8 and 6.2.10'),
    says: 'Pages use no operator outside the standard, no graphics states, patterns, pictures or transparency.',
    flaws: (pdf) => [
      ...eachPage(pdf, ({ operators }) => [...operators].filter((each) => !knownOperators.has(each))),
      ...pagesOf(pdf).flatMap(({ dictionary: page }) => [
        ...['/ExtGState', '/XObject', '/Pattern', '/Shading'].filter(
          (key) => Object.keys(dictionary(inside(pdf, page['/Resources'], key))).length > 0,
        ),
        ...(page['/Group'] === undefined ? [] : ['/Group']),
      ]),
    ],
    spoil: (pdf) => onFirstPage(pdf, (content) => `${content}\n1 glow`),
  },
  {
    clause: a2('6.4.1, 6.5.1, 6.8 and 6.9'),
    says: 'The document holds no form, script, action, file or layer (ISO 14289-1, 7.10, 7.11 and 7.15).',
    flaws: (pdf) => [
      ...['/AcroForm', '/OpenAction', '/AA', '/OCProperties', '/Requirements'].filter(
        (key) => key in catalog(pdf),
      ),
      ...['/JavaScript', '/EmbeddedFiles'].filter(
        (key) => key in dictionary(inside(pdf, catalog(pdf)['/Names'])),
      ),
    ],
    spoil: (pdf) => {
      catalog(pdf)['/OpenAction'] = { '/S': '/JavaScript' };
    },
  },
  {
    clause: a2('6.6.2.1 and 6.6.4'),
    says: 'The metadata are neither packed nor encrypted, and say that it is PDF/A-2a.',
    flaws: (pdf) => {
      const stream = pdf.streams.get(String(catalog(pdf)['/Metadata']));
      const xmp = metadata(pdf);
      return [
        ...(stream?.dict['/Filter'] === undefined ? [] : ['packed']),
        ...(/<pdfaid:part>2<\/pdfaid:part>/.test(xmp) ? [] : ['part']),
        ...(/<pdfaid:conformance>A<\/pdfaid:conformance>/.test(xmp) ? [] : ['conformance']),
      ];
    },
    spoil: (pdf) => spoilMetadata(pdf, /<pdfaid:conformance>A/, '<pdfaid:conformance>'),
  },
  {
    clause: a2('6.6.2.3.1 to 6.6.2.3.3'),
    says: 'Properties from outside XMP are described in the file: that of PDF/UA too.',
    flaws: (pdf) => {
      const xmp = metadata(pdf);
      const described = [...xmp.matchAll(/<pdfaSchema:prefix>([^<]+)</g)].map(([, prefix]) => prefix);
      const used = [...xmp.matchAll(/xmlns:([a-zA-Z]+)=/g)].map(([, prefix = '']) => prefix);
      return used.filter((prefix) => !predefined.has(prefix) && !described.includes(prefix));
    },
    spoil: (pdf) => spoilMetadata(pdf, /<pdfaSchema:prefix>/, '<pdfaSchema:x>'),
  },
  {
    clause: a2('6.6.3'),
    says: 'What the old dictionary of information says, the metadata say as well.',
    flaws: (pdf) => {
      const info = dictionary(inside(pdf, pdf.trailer['/Info']));
      const xmp = metadata(pdf).replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>');
      return ['/Title', '/Subject', '/Author', '/Creator', '/Producer', '/Keywords'].filter(
        (key) => info[key] !== undefined && !xmp.includes(`>${words(follow(pdf, info[key]))}<`),
      );
    },
    spoil: (pdf) => {
      dictionary(inside(pdf, pdf.trailer['/Info']))['/Title'] = 'u:Another';
    },
  },
  {
    clause: 'ISO 32000-1, 12.3.3, tables 152 and 153',
    says: 'The outline counts what it holds, and each of its entries leads to a page.',
    flaws: outlineFlaws,
    spoil: (pdf) => {
      const first = dictionary(inside(pdf, catalog(pdf)['/Outlines'], '/First'));
      delete first['/Count'];
      first['/Dest'] = [];
    },
  },
];

const standardRoles = new Set(
  'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Figure Formula Form'.split(
    ' ',
  ),
);

/** What these may hold; whatever is not here may hold anything. */
const kids: { readonly [role: string]: readonly string[] } = {
  Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'],
  THead: ['TR'],
  TBody: ['TR'],
  TFoot: ['TR'],
  TR: ['TH', 'TD'],
  L: ['LI', 'Caption', 'L'],
  LI: ['Lbl', 'LBody'],
  TOC: ['TOC', 'TOCI', 'Caption'],
  TOCI: ['Lbl', 'Reference', 'P', 'TOC'],
};
const parents: { readonly [role: string]: readonly string[] } = {
  THead: ['Table'],
  TBody: ['Table'],
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
  LI: ['L'],
  LBody: ['LI'],
  TOCI: ['TOC'],
};

/** Of XMP and PDF/A themselves. */
const predefined = new Set(
  'x rdf dc xmp xmpMM pdf pdfaid pdfaExtension pdfaSchema pdfaProperty pdfaType pdfaField'.split(' '),
);

/** ISO 32000-1, annex A. */
const knownOperators = new Set(
  'b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i ID j J K k l M m MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w W W* y \' "'.split(
    ' ',
  ),
);

function eachPage(pdf: Pdf, look: (drawn: ReturnType<typeof drawnOn>) => readonly string[]): string[] {
  return pagesOf(pdf).flatMap((page, at) =>
    look(drawnOn(pdf, page)).map((flaw) => `page ${at + 1}: ${flaw}`),
  );
}

/** Every font of the file, with the codes that pages show in it. */
function eachFont(
  pdf: Pdf,
  look: (font: Dictionary, shown: ReadonlySet<number>) => readonly string[],
): string[] {
  return pagesOf(pdf).flatMap((page) => {
    const { shown } = drawnOn(pdf, page);
    const fonts = dictionary(inside(pdf, page.dictionary['/Resources'], '/Font'));
    return Object.entries(fonts).flatMap(([name, font]) =>
      look(dictionary(follow(pdf, font)), shown.get(name.slice(1)) ?? new Set()),
    );
  });
}

/** Code to what it stands for, in hexadecimal. */
function toUnicode(pdf: Pdf, font: Dictionary): ReadonlyMap<number, string> {
  const map = new Map<number, string>();
  const data = pdf.streams.get(String(font['/ToUnicode']))?.data ?? '';
  for (const [, from = '', to = '', rest = ''] of data.matchAll(
    /<([0-9a-f]+)>\s*<([0-9a-f]+)>\s*\[([^\]]*)\]/gi,
  )) {
    const meant = [...rest.matchAll(/<([0-9a-f ]+)>/gi)].map(([, each = '']) => each);
    for (let code = Number.parseInt(from, 16); code <= Number.parseInt(to, 16); code += 1) {
      const each = meant[code - Number.parseInt(from, 16)];
      if (each !== undefined) map.set(code, each);
    }
  }
  for (const [, block = ''] of data.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, code = '', meant = ''] of block.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi))
      map.set(Number.parseInt(code, 16), meant);
  return map;
}

function below(part: Part): readonly Part[] {
  return part.parts.flatMap((each) => [each, ...below(each)]);
}

function attribute(pdf: Pdf, part: Dictionary, key: string): Value | undefined {
  return list(follow(pdf, part['/A']))
    .map((each) => dictionary(follow(pdf, each))[key])
    .find((value) => value !== undefined);
}

function parentTreeFlaws(pdf: Pdf): readonly string[] {
  const nums = list(inside(pdf, catalog(pdf)['/StructTreeRoot'], '/ParentTree', '/Nums'));
  const owners = new Map<string, string[]>();
  for (const part of structureOf(pdf))
    for (const { page, mcid } of part.marks)
      owners.set(`${page} ${mcid}`, [...(owners.get(`${page} ${mcid}`) ?? []), part.reference]);
  const flaws = pagesOf(pdf).flatMap(({ reference, dictionary: page }, at) => {
    const key = nums.indexOf(page['/StructParents'] ?? -1);
    const tree = key === -1 || key % 2 === 1 ? [] : list(follow(pdf, nums[key + 1]));
    const mcids = drawnOn(pdf, { reference, dictionary: page }).markings.flatMap(
      ({ marking }) => marking.mcid ?? [],
    );
    const wrong = mcids.filter((mcid) => {
      const own = owners.get(`${reference} ${mcid}`) ?? [];
      owners.delete(`${reference} ${mcid}`);
      return own.length !== 1 || own[0] !== tree[mcid];
    });
    return [
      ...(new Set(mcids).size === mcids.length ? [] : [`page ${at + 1} has a mark twice`]),
      ...wrong.map((mcid) => `page ${at + 1}, mark ${mcid}`),
    ];
  });
  return [...flaws, ...[...owners.keys()].map((mark) => `${mark} stands on no page`)];
}

function irregular(pdf: Pdf, table: Part): readonly string[] {
  const rows = table.parts
    .flatMap((part) => (part.role === 'TR' ? [part] : part.parts))
    .filter(({ role }) => role === 'TR');
  let hanging: { width: number; left: number }[] = [];
  const widths = rows.map(({ parts }) => {
    const cells = parts.map(({ dictionary: own }) => ({
      width: Number(attribute(pdf, own, '/ColSpan') ?? 1),
      left: Number(attribute(pdf, own, '/RowSpan') ?? 1),
    }));
    const wide = [...cells, ...hanging].reduce((sum, { width }) => sum + width, 0);
    hanging = [...hanging, ...cells]
      .map((each) => ({ ...each, left: each.left - 1 }))
      .filter(({ left }) => left > 0);
    return wide;
  });
  return new Set(widths).size <= 1 ? [] : [`${table.reference}: ${widths.join(', ')}`];
}

function beyondLimits(value: Value): readonly string[] {
  if (typeof value === 'number') return Math.abs(value) > 2 ** 31 - 1 ? [String(value)] : [];
  if (typeof value === 'string') {
    if (value.startsWith('/') && value.length > 128) return [value];
    return value.length > 32_767 ? [`${value.slice(0, 40)}…`] : [];
  }
  if (Array.isArray(value)) return value.flatMap(beyondLimits);
  return Object.values(dictionary(value)).flatMap(beyondLimits);
}

function outlineFlaws(pdf: Pdf): readonly string[] {
  const outlines = catalog(pdf)['/Outlines'];
  if (outlines === undefined) return [];
  const pages = new Set(pagesOf(pdf).map(({ reference }) => reference));
  const flaws: string[] = [];
  /** How many entries would be seen below if this one were open. */
  const below = (node: Dictionary): number => {
    let seen = 0;
    for (let at = node['/First']; at !== undefined; ) {
      const entry = dictionary(follow(pdf, at));
      const title = words(entry['/Title']);
      if (title === '') flaws.push('an entry without words');
      if (!pages.has(String(list(follow(pdf, entry['/Dest']))[0]))) flaws.push(`${title} leads nowhere`);
      const within = below(entry);
      const count = Number(entry['/Count'] ?? 0);
      if (Math.abs(count) !== within) flaws.push(`${title} counts ${count} of ${within}`);
      seen += 1 + Math.max(0, count);
      at = entry['/Next'];
    }
    return seen;
  };
  const root = dictionary(follow(pdf, outlines));
  const all = below(root);
  if (root['/Count'] !== all) flaws.push(`the outline counts ${root['/Count']} of ${all}`);
  return flaws;
}

function metadata(pdf: Pdf): string {
  const data = pdf.streams.get(String(catalog(pdf)['/Metadata']))?.data ?? '';
  return Buffer.from(data, 'latin1').toString('utf8');
}

function spoilMetadata(pdf: Pdf, what: RegExp, by: string): void {
  const stream = pdf.streams.get(String(catalog(pdf)['/Metadata']));
  if (stream !== undefined) stream.data = stream.data.replace(what, by);
}

function onFirstPage(pdf: Pdf, change: (content: string) => string): void {
  const stream = pdf.streams.get(String(pagesOf(pdf)[0]?.dictionary['/Contents']));
  if (stream !== undefined) stream.data = change(stream.data);
}

function spoilPart(pdf: Pdf, role: string, key: string, value: Value): void {
  const part = structureOf(pdf).find((each) => each.role === role);
  if (part === undefined) return;
  if (value === null) delete part.dictionary[key];
  else part.dictionary[key] = value;
}

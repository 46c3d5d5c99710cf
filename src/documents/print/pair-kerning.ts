/**
 * What a font sets a pair of letters closer, read from its table of pair positions (OpenType 1.9, GPOS, lookup
 * type 2, formats 1 and 2) for the Latin script. Asking the font's own layout for each pair gives the same and
 * takes a hundred times as long.
 */

/** The parts of fontkit's decoded GPOS that are used. Lists are read when they are asked for. */
interface Positions {
  readonly scriptList: readonly {
    readonly tag: string;
    readonly script: { readonly defaultLangSys: { readonly featureIndexes: readonly number[] } | null };
  }[];
  readonly featureList: readonly {
    readonly tag: string;
    readonly feature: { readonly lookupListIndexes: readonly number[] };
  }[];
  readonly lookupList: Lazy<{ readonly lookupType: number; readonly subTables: readonly SubTable[] }>;
}

interface Lazy<Entry> {
  get(index: number): Entry;
}

interface Value {
  readonly xAdvance?: number;
}

type Coverage =
  | { readonly version: 1; readonly glyphs: readonly number[] }
  | {
      readonly version: 2;
      readonly rangeRecords: readonly {
        readonly start: number;
        readonly end: number;
        readonly startCoverageIndex: number;
      }[];
    };

type Classes =
  | { readonly version: 1; readonly startGlyph: number; readonly classValueArray: readonly number[] }
  | {
      readonly version: 2;
      readonly classRangeRecord: readonly {
        readonly start: number;
        readonly end: number;
        readonly class: number;
      }[];
    };

type SubTable =
  | {
      readonly version: 1;
      readonly coverage: Coverage;
      readonly pairSets: Lazy<readonly { readonly secondGlyph: number; readonly value1: Value | null }[]>;
    }
  | {
      readonly version: 2;
      readonly coverage: Coverage;
      readonly classDef1: Classes;
      readonly classDef2: Classes;
      readonly classRecords: Lazy<Lazy<{ readonly value1: Value | null }>>;
    };

/** By how many units of the em a pair of glyphs is set closer (negative); undefined where the table is of another kind. */
export function pairKerning(gpos: unknown): ((left: number, right: number) => number) | undefined {
  if (gpos === undefined || gpos === null) return () => 0;
  // fontkit has no types of its own for its tables.
  const { scriptList, featureList, lookupList } = gpos as Positions;
  const script = scriptList.find(({ tag }) => tag === 'latn') ?? scriptList.find(({ tag }) => tag === 'DFLT');
  const features = script?.script.defaultLangSys?.featureIndexes ?? [];
  const indexes = features.flatMap((index) => {
    const entry = featureList[index];
    return entry?.tag === 'kern' ? entry.feature.lookupListIndexes : [];
  });
  const lookups = [...new Set(indexes)].toSorted((a, b) => a - b).map((index) => lookupList.get(index));
  if (lookups.some(({ lookupType }) => lookupType !== 2)) return undefined;
  return (left, right) =>
    lookups.reduce((sum, { subTables }) => sum + (firstValue(subTables, left, right) ?? 0), 0);
}

/** Of the tables of one lookup the first that holds the pair counts, even if what it says is nothing. */
function firstValue(tables: readonly SubTable[], left: number, right: number): number | undefined {
  for (const table of tables) {
    const index = coverageIndex(table.coverage, left);
    if (index < 0) continue;
    if (table.version === 1) {
      const pair = table.pairSets.get(index).find(({ secondGlyph }) => secondGlyph === right);
      if (pair !== undefined) return pair.value1?.xAdvance ?? 0;
      continue;
    }
    const record = table.classRecords
      .get(classOf(table.classDef1, left))
      .get(classOf(table.classDef2, right));
    return record.value1?.xAdvance ?? 0;
  }
  return undefined;
}

function coverageIndex(coverage: Coverage, glyph: number): number {
  if (coverage.version === 1) return coverage.glyphs.indexOf(glyph);
  const range = rangeOf(coverage.rangeRecords, glyph);
  return range === undefined ? -1 : range.startCoverageIndex + glyph - range.start;
}

function classOf(classes: Classes, glyph: number): number {
  if (classes.version === 1) return classes.classValueArray[glyph - classes.startGlyph] ?? 0;
  return rangeOf(classes.classRangeRecord, glyph)?.class ?? 0;
}

/** Ranges stand in order and apart, so the one that holds a glyph is found by halving. */
function rangeOf<Range extends { readonly start: number; readonly end: number }>(
  ranges: readonly Range[],
  glyph: number,
): Range | undefined {
  let [low, high] = [0, ranges.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const range = ranges[middle];
    if (range === undefined || glyph < range.start) high = middle - 1;
    else if (glyph > range.end) low = middle + 1;
    else return range;
  }
  return undefined;
}

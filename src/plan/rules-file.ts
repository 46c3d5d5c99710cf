/**
 * A rules file to the rules it holds: read and placed as plans are, then its tables held to what tables of
 * rules must be. What is wrong with it is found at its place in that file.
 */
import type * as z from 'zod';
import type { Finding, PlanPath } from '../findings/finding.ts';
import type { SourceText } from '../findings/source-text.ts';
import type { Country, Row } from '../regulations/country.ts';
import { countryFlaws, localFlaws, type TableFlaw } from '../regulations/country-flaws.ts';
import type { LocalRules } from '../regulations/law.ts';
import { type FileKind, type ReadFile, readAs } from './read-as.ts';
import { countryKeys, rulesSchema } from './rules-schema.ts';

export interface RulesFile {
  readonly text: SourceText;
  readonly findings: readonly Finding[];
  /** Absent when the text has errors. */
  readonly rules?: WholeRules | AddedRules;
}

interface WholeRules {
  readonly scope: 'country';
  readonly country: Country;
}

interface AddedRules {
  readonly scope: 'local';
  readonly local: LocalRules;
  /** What is wrong with its tables beside those of the country they add to. */
  flaws(country: Country): readonly Finding[];
}

const fileKind: FileKind = {
  noun: 'rules file',
  begins: '`readback-rules: 1`',
  other: { key: 'readback', sentence: 'This is a plan; under `rules` stand a country and rules files.' },
};

const localFile: FileKind = {
  ...fileKind,
  refusedKey: (key, [table]) =>
    Object.hasOwn(countryKeys, key) && table === undefined
      ? `Local rules cannot have \`${key}\`: they add to the rules of a country and cannot allow what those do not.`
      : key === 'fixed' && table === 'offsets'
        ? 'Local rules cannot fix an offset: only the rules of a country leave no choice.'
        : undefined,
};

/** @param file the file's name as findings show it */
export function rulesFile(content: string, file: string): RulesFile {
  const reading = readAs(content, file, rulesSchema, isLocal(content) ? localFile : fileKind);
  const { read, findings, text } = reading;
  if (read === undefined) return { findings, text };
  if (read.scope === 'local') {
    const local = toLocal(read);
    const flaws = (country: Country) => flawFindings(localFlaws(local, country), reading);
    return { findings, text, rules: { scope: 'local', local, flaws } };
  }
  const country = toCountry(read);
  const flaws = flawFindings(countryFlaws(country), reading);
  return flaws.length > 0
    ? { findings: flaws, text }
    : { findings, text, rules: { scope: 'country', country } };
}

/** Only for the words about a wrong key, before the file is known to be sound. */
function isLocal(content: string): boolean {
  return /^scope:\s*local\b/m.test(content);
}

type Read<Scope> = Extract<z.output<typeof rulesSchema>, { scope: Scope }>;

function toLocal(read: Read<'local'>): LocalRules {
  return {
    name: read.name,
    sources: read.sources,
    bandPlan: marked(read['band-plan'], read.sources),
    offsets: marked(read.offsets, read.sources),
    rasters: marked(read.rasters, read.sources),
    barredStations: marked(read['barred-stations'], read.sources),
    powers: marked(read.powers, read.sources),
    closed: marked(read.closed, read.sources),
  };
}

function toCountry(read: Read<'country'>): Country {
  const { sources } = read;
  return {
    code: read.code,
    name: read.name,
    asOf: read['as-of'],
    caution: read.caution,
    ...(read['language'] !== undefined && { language: read['language'] }),
    exposure: read.exposure,
    mainsHz: read.mains,
    sources,
    services: marked(read.services, sources),
    allocations: marked(read.allocations, sources),
    emissions: marked(read.emissions, sources),
    widths: marked(read.widths, sources),
    powers: marked(read.powers, sources),
    barredStations: marked(read['barred-stations'], sources),
    bandPlan: marked(read['band-plan'], sources),
    offsets: marked(read.offsets, sources),
    channels: marked(read.channels, sources),
    listenOnly: marked(read['listen-only'], sources),
    areas: marked(read.areas, sources),
    rasters: marked(read.rasters, sources),
  };
}

/** A row that rests on a remembered source is remembered itself. */
function marked<Kind extends Row>(rows: readonly Kind[], sources: Country['sources']): readonly Kind[] {
  return rows.map((row) => {
    const source = Object.hasOwn(sources, row.source) ? sources[row.source] : undefined;
    return source?.fromMemory ? { ...row, fromMemory: true as const } : row;
  });
}

function flawFindings(flaws: readonly TableFlaw[], { placeOf }: ReadFile<unknown>): readonly Finding[] {
  return flaws
    .filter(({ harmless }) => harmless !== true)
    .map(({ at, text }): Finding => {
      const [table, row] = at;
      const path: PlanPath = [table.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), row];
      return {
        rule: 'plan/unsound-rules',
        severity: 'error',
        basis: 'consistency',
        message: text,
        path,
        place: placeOf(path),
      };
    });
}

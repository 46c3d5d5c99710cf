/** What is wrong with the imports of one source file, by the floors of the house. */
import { posix } from 'node:path';

/** Lowest first. Rooms on one floor do not know each other. `pipeline.ts` is a room of one file. */
const floors: readonly (readonly string[])[] = [
  ['findings', 'radio'],
  ['regulations', 'reach', 'airtime', 'schedule', 'fallback'],
  ['plan'],
  ['consequences'],
  ['checks', 'audit'],
  ['documents'],
  ['pipeline.ts'],
  ['cli'],
];

/** Packages that only one place may know, so that they can be replaced there, and are loaded only where needed. */
const homes: Readonly<Record<string, string>> = {
  yaml: 'src/plan/',
  zod: 'src/plan/',
  pdfkit: 'src/documents/print/',
  fontkit: 'src/documents/print/',
  handlebars: 'src/documents/',
  geotiff: 'src/reach/',
  commander: 'src/cli/',
  picocolors: 'src/cli/',
};

/** Modules of Node that compute and touch nothing outside, and the places below `cli` that may use them. */
const pureModules: Readonly<Record<string, readonly string[]>> = {
  'node:zlib': ['src/reach/', 'src/documents/print/'],
  'node:crypto': ['src/plan/plan-check.ts', 'src/documents/'],
};

/** @param file path from the root of the project, `src/plan/load.ts` */
export function importFlaws(file: string, text: string): readonly string[] {
  const own = roomOf(file);
  if (floorOf(own) === -1) return [`${file} stands in no room of the house`];
  return importsOf(text).flatMap((target) => {
    const flaw = target.startsWith('.') ? ownImportFlaw(file, own, target) : packageFlaw(file, own, target);
    return flaw === undefined ? [] : [`${file}: ${flaw}`];
  });
}

/** Every module a text imports, for its types or its values, at once or later. */
export function importsOf(text: string): readonly string[] {
  const patterns = [
    /^\s*(?:import|export)\b[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]/gm,
    /^\s*import\s*['"]([^'"]+)['"]/gm,
    /\bimport\s*\(\s*['"`]([^'"`]+)['"`]/g,
    /\brequire\s*\(\s*['"`]([^'"`]+)['"`]/g,
  ];
  return patterns.flatMap((pattern) => [...text.matchAll(pattern)].map((match) => match[1] ?? ''));
}

function ownImportFlaw(file: string, own: string, target: string): string | undefined {
  if (!target.endsWith('.ts') && !target.endsWith('.json')) return `${target} does not name the real file`;
  const path = posix.join(posix.dirname(file), target);
  if (!path.startsWith('src/')) return `${target} leads out of src`;
  const room = roomOf(path);
  if (room === own) return undefined;
  if (floorOf(room) === -1) return `${target} leads to no room of the house`;
  if (floorOf(room) === floorOf(own)) return `${own} and ${room} are on one floor and do not know each other`;
  return floorOf(room) > floorOf(own) ? `${own} is below ${room} and must not know it` : undefined;
}

function packageFlaw(file: string, own: string, target: string): string | undefined {
  if (target.startsWith('node:')) {
    const allowed = own === 'cli' || (pureModules[target] ?? []).some((place) => file.startsWith(place));
    return allowed ? undefined : `${target} is for cli only`;
  }
  const name = target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/');
  const home = homes[name];
  return home === undefined || file.startsWith(home) ? undefined : `${name} is known to ${home} only`;
}

function roomOf(path: string): string {
  return path.split('/')[1] ?? '';
}

function floorOf(room: string): number {
  return floors.findIndex((rooms) => rooms.includes(room));
}

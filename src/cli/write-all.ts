/**
 * Writes a set of files into a folder, all or nothing.
 *
 * Everything is first written in full to a folder beside the old documents, `.readback-new`. Only when all
 * of it is on the disk does that folder become `.readback-ready`, and its files move into place by renames,
 * which need no room. A build that fails, is interrupted or runs out of room before that leaves the
 * previous documents whole; one that dies during the renames is finished by the next build, because
 * `.readback-ready` still says what was decided. Of old files, only those that the last manifest names are
 * removed, so a folder may hold other things. Two builds into one folder take turns.
 */
import { lstat, mkdir, open, readFile, realpath, rename, rm } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import { Refusal } from '../findings/refusal.ts';
import { lockFolder } from './folder-lock.ts';
import { uninterrupted } from './interruption.ts';

const staging = '.readback-new';
const decided = '.readback-ready';
/** Inside a decided folder: what to move and what to remove. */
const agenda = '.agenda.json';
const mostAtOnce = 16;
const manifestName = 'manifest.json';

interface Agenda {
  readonly move: readonly string[];
  readonly remove: readonly string[];
}

/** @param files paths relative to the folder, with `/`, the manifest among them */
export async function writeAll(folder: string, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  const unlock = await mkdir(folder, { recursive: true })
    .then(() => lockFolder(folder))
    .catch((error: NodeJS.ErrnoException) => {
      throw error instanceof Refusal ? error : unwritable(folder, error);
    });
  try {
    await decide(folder, files);
    await uninterrupted(() => finish(folder)).catch((error: NodeJS.ErrnoException) => {
      throw unwritable(folder, error);
    });
  } finally {
    await unlock().catch(() => undefined);
  }
}

/** Writes all of it aside; after that nothing is left to do but to move it. */
async function decide(folder: string, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  const stage = join(folder, staging);
  try {
    await uninterrupted(() => finish(folder));
    await rm(stage, { recursive: true, force: true });
    for (const path of files.keys()) await clearWay(folder, path);
    await writeTogether(stage, [...files]);
    const kept = new Set(files.keys());
    const remove = (await namedByManifest(folder)).filter((path) => !kept.has(path));
    const plan: Agenda = { move: [...kept].sort(manifestLast), remove };
    await writeFlushed(join(stage, agenda), Buffer.from(JSON.stringify(plan)));
    await rename(stage, join(folder, decided));
  } catch (error) {
    await rm(stage, { recursive: true, force: true }).catch(() => undefined);
    throw error instanceof Refusal ? error : unwritable(folder, error as NodeJS.ErrnoException);
  }
}

/** Moves what was decided into place; does nothing where nothing was. May be interrupted and run again. */
async function finish(folder: string): Promise<void> {
  const ready = join(folder, decided);
  const { move, remove } = await readAgenda(folder);
  for (const path of move) {
    const from = join(ready, path);
    if ((await lstat(from).catch(() => undefined)) === undefined) continue; // moved before an interruption
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await rename(from, join(folder, path));
  }
  for (const path of remove) {
    const found = await lstat(join(folder, path)).catch(() => undefined);
    // Only files and links are ours; a folder of that name is somebody's.
    if (found !== undefined && !found.isDirectory()) await rm(join(folder, path), { force: true });
  }
  await rm(ready, { recursive: true, force: true });
}

/** What an earlier build decided and did not finish. An agenda that is not one was not written by us. */
async function readAgenda(folder: string): Promise<Agenda> {
  const text = await readFile(join(folder, decided, agenda), 'utf8').catch(() => '{}');
  try {
    const { move, remove } = JSON.parse(text) as { move?: unknown; remove?: unknown };
    return { move: await inside(folder, move), remove: await inside(folder, remove) };
  } catch {
    return { move: [], remove: [] };
  }
}

/** The paths of a list that lie in the folder, in truth and not by way of a link that leads out of it. */
async function inside(folder: string, paths: unknown): Promise<string[]> {
  const kept: string[] = [];
  const root = await realpath(folder);
  for (const path of Array.isArray(paths) ? paths : []) {
    if (typeof path !== 'string' || path === '' || path.includes('\0')) continue;
    const target = resolve(root, path);
    if (!target.startsWith(root + sep)) continue;
    const parent = await realpath(dirname(target)).catch(() => dirname(target));
    if (parent === root || parent.startsWith(root + sep)) kept.push(path);
  }
  return kept;
}

/** Refuses while nothing is written yet where a folder, a file or a link stands in a document's way. */
async function clearWay(folder: string, path: string): Promise<void> {
  const found = await lstat(join(folder, path)).catch(() => undefined);
  if (found?.isDirectory()) throw inTheWay(join(folder, path), 'a folder of that name exists');
  let way = folder;
  for (const step of path.split('/').slice(0, -1)) {
    way = join(way, step);
    const there = await lstat(way).catch(() => undefined);
    if (there?.isSymbolicLink())
      throw inTheWay(way, 'it is a link, and documents are not written through links');
    if (there !== undefined && !there.isDirectory()) throw inTheWay(way, 'a file of that name exists');
  }
}

function inTheWay(path: string, why: string): Refusal {
  return new Refusal(`${path} is in the way: ${why}.`, 'Move it, or name another folder with --out.');
}

/**
 * Several at once, since each waits for the disk; not all, since a process may open only so many. When one cannot be
 * written the others are waited for, so that nothing is still being written when the folder is taken away.
 */
async function writeTogether(
  folder: string,
  files: readonly (readonly [path: string, bytes: Uint8Array])[],
): Promise<void> {
  for (let from = 0; from < files.length; from += mostAtOnce) {
    const written = await Promise.allSettled(
      files.slice(from, from + mostAtOnce).map(([path, bytes]) => writeFlushed(join(folder, path), bytes)),
    );
    for (const each of written) if (each.status === 'rejected') throw each.reason;
  }
}

async function writeFlushed(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const file = await open(path, 'w');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Paths that the folder's last manifest names, and none outside the folder whatever it says. */
async function namedByManifest(folder: string): Promise<string[]> {
  const text = await readFile(join(folder, manifestName), 'utf8').catch(() => '{}');
  try {
    const { files } = JSON.parse(text) as { files?: { path?: unknown }[] };
    return await inside(
      folder,
      (files ?? []).map((entry) => entry.path),
    );
  } catch {
    return [];
  }
}

function manifestLast(a: string, b: string): number {
  return Number(a === manifestName) - Number(b === manifestName) || (a < b ? -1 : 1);
}

function unwritable(folder: string, error: NodeJS.ErrnoException): Refusal {
  switch (error.code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return new Refusal(
        `There is no room left to write into ${folder}.`,
        'The previous documents are untouched. Make room and build again.',
      );
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return new Refusal(`${folder} may not be written to.`, 'Name another folder with --out.');
    case 'ENOTDIR':
    case 'EEXIST':
      return new Refusal(
        `${folder} is in the way: a file of that name exists.`,
        'Name another folder with --out.',
      );
    default:
      return new Refusal(
        `The documents could not be written into ${folder}: ${error.message}.`,
        'The previous documents are untouched.',
      );
  }
}

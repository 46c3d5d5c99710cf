/** The bytes of a plan, from a file or from standard input, or a refusal in words. */
import { open, realpath } from 'node:fs/promises';
import { basename, dirname, resolve, sep } from 'node:path';
import { Refusal } from '../findings/refusal.ts';
import { decode, largestPlanBytes, tooLarge } from '../plan/decode.ts';
import { takeStandardInput } from './standard-input.ts';

export interface PlanFile {
  /** As findings show it. */
  readonly name: string;
  readonly text: string;
  /** `plan` of `plans/plan.yaml`. */
  readonly stem: string;
  /** Files named in a plan are looked for here, and nowhere above. */
  readonly folder: string;
}

/** @param path a file, or `-` for standard input, which findings then call `stdinName` */
export async function readPlanFile(path: string, stdinName: string): Promise<PlanFile> {
  const bytes =
    path === '-'
      ? await readAll(takeStandardInput(), 'standard input', largestPlanBytes)
      : await readWhole(path);
  const name = path === '-' ? stdinName : path;
  const stem =
    basename(name)
      .replace(/\.ya?ml$/i, '')
      .replace(/[^A-Za-z0-9._-]+/g, '-')
      .replace(/^[.-]+/, '') || 'plan';
  return {
    name,
    text: decode(bytes, name),
    stem,
    folder: path === '-' ? process.cwd() : dirname(resolve(path)),
  };
}

/** One elevation tile of 3601 by 3601 heights takes 26 megabytes; several may stand in one file. */
const largestBesideBytes = 256 * 1024 * 1024;

/** Reads a file that a plan names, which must lie in the plan's own folder or below it. */
export async function readBeside(folder: string, relative: string): Promise<Uint8Array> {
  const wanted = resolve(folder, relative);
  const root = await realpath(folder).catch(() => folder);
  const real = await realpath(wanted).catch(() => wanted);
  if (real !== root && !real.startsWith(root + sep)) {
    throw new Refusal(
      `${relative} lies outside the folder of the plan.`,
      'Put files that a plan names beside it or below it.',
    );
  }
  return readWhole(wanted, { largestBytes: largestBesideBytes, name: relative, beside: folder });
}

interface Wanted {
  readonly largestBytes: number;
  /** As the user knows it. */
  readonly name: string;
  /** The folder in which a file that a plan names was looked for. */
  readonly beside?: string;
}

async function readWhole(
  path: string,
  wanted: Wanted = { largestBytes: largestPlanBytes, name: path },
): Promise<Uint8Array> {
  const { largestBytes, name } = wanted;
  const file = await open(path, 'r').catch((error: NodeJS.ErrnoException) => {
    throw unreadable(wanted, error);
  });
  try {
    const found = await file.stat();
    if (found.isDirectory()) throw new Refusal(`${name} is a folder.`, 'Name the file itself.');
    if (found.size > largestBytes) {
      throw largestBytes === largestPlanBytes
        ? tooLarge(name, found.size)
        : new Refusal(
            `${name} holds ${Math.ceil(found.size / 1024 / 1024)} MB; at most ${largestBytes / 1024 / 1024} MB are read.`,
          );
    }
    if (found.isFile()) return await file.readFile();
    // A pipe or a device has no size to ask beforehand, and may have no end.
    return await readAll(file.createReadStream({ autoClose: false }), name, largestBytes);
  } catch (error) {
    throw error instanceof Refusal ? error : unreadable(wanted, error as NodeJS.ErrnoException);
  } finally {
    await file.close();
  }
}

async function readAll(
  stream: AsyncIterable<unknown>,
  name: string,
  largestBytes: number,
): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += (chunk as Buffer).length;
    if (size > largestBytes) throw tooLarge(name, size);
    chunks.push(chunk as Buffer);
  }
  return Buffer.concat(chunks);
}

function unreadable({ name, beside }: Wanted, error: NodeJS.ErrnoException): Refusal {
  switch (error.code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return new Refusal(
        `There is no file ${name}.`,
        beside === undefined
          ? 'Check the spelling and the folder; `readback new FILE` writes a plan to start from.'
          : `The plan names it; it was looked for in ${beside}.`,
      );
    case 'EACCES':
    case 'EPERM':
      return new Refusal(`${name} may not be read.`, 'Ask for read access to it.');
    case 'EISDIR':
      return new Refusal(`${name} is a folder.`, 'Name the file itself.');
    default:
      return new Refusal(`${name} could not be read: ${error.message}.`);
  }
}

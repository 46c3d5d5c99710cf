/** Puts new contents in place of a file's, whole or not at all, with the mode it had. */
import { randomBytes } from 'node:crypto';
import { chmod, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { Refusal } from '../findings/refusal.ts';

export async function replaceFile(path: string, contents: string | Uint8Array): Promise<void> {
  // A link stays a link: what it leads to is replaced.
  const real = await realpath(path).catch(() => path);
  const aside = join(dirname(real), `.${basename(real)}.${randomBytes(6).toString('hex')}`);
  try {
    const mode = await stat(real).then(
      (found) => found.mode & 0o7777,
      () => undefined,
    );
    const file = await open(aside, 'wx');
    try {
      await file.writeFile(contents);
      await file.sync();
    } finally {
      await file.close();
    }
    if (mode !== undefined) await chmod(aside, mode);
    await rename(aside, real);
  } catch (error) {
    await rm(aside, { force: true }).catch(() => undefined);
    const { code, message } = error as NodeJS.ErrnoException;
    throw new Refusal(
      code === 'ENOSPC'
        ? `There is no room left to write ${path}.`
        : `${path} could not be written: ${message}.`,
      'It is as it was.',
    );
  }
}

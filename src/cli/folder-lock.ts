/**
 * One build at a time into a folder. Whoever begins leaves its process number in `.readback-busy`; the next waits
 * until that is gone, and passes over what a process left that is no more.
 */
import { open, readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { Refusal } from '../findings/refusal.ts';

const lockName = '.readback-busy';
/** Between making the file and writing its number nobody knows whose it is; that takes far less. */
const unsignedMs = 5000;

/**
 * @param patienceMs how long to wait for another build
 * @returns a function that lets the next one in
 * @throws {Refusal} if another build is still at it; errors of the file system as they are
 */
export async function lockFolder(folder: string, patienceMs = 30_000): Promise<() => Promise<void>> {
  const path = join(folder, lockName);
  for (const begun = Date.now(); ; await wait(50)) {
    if (await sign(path)) return () => rm(path, { force: true });
    if (await isLeftBehind(path)) await rm(path, { force: true });
    else if (Date.now() - begun > patienceMs) {
      throw new Refusal(
        `Another build is writing into ${folder}.`,
        `Wait for it, or remove ${path} if there is none.`,
      );
    }
  }
}

/** False where another has signed already. */
async function sign(path: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx');
    try {
      await file.writeFile(String(process.pid));
    } catch (error) {
      await rm(path, { force: true }).catch(() => undefined);
      throw error;
    } finally {
      await file.close();
    }
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

async function isLeftBehind(path: string): Promise<boolean> {
  const pid = Number(await readFile(path, 'utf8').catch(() => ''));
  if (!Number.isInteger(pid) || pid <= 0) {
    const found = await stat(path).catch(() => undefined);
    return found !== undefined && Date.now() - found.mtimeMs > unsignedMs;
  }
  try {
    process.kill(pid, 0);
    return false;
  } catch (error) {
    // Another user's process may not be asked, and is there.
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}

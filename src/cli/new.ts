/** `readback new`: a small valid plan to start from. */
import { writeFile } from 'node:fs/promises';
import { Refusal } from '../findings/refusal.ts';
import { starterPlan } from '../plan/starter-plan.ts';
import type { ExitStatus } from './end-with.ts';

export async function newPlan(file: string): Promise<ExitStatus> {
  if (file === '-') {
    process.stdout.write(starterPlan);
    return 0;
  }
  await writeFile(file, starterPlan, { flag: 'wx' }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'EEXIST')
      throw new Refusal(`${file} is there already.`, 'Name a file that is not; nothing was changed.');
    throw new Refusal(`${file} could not be written: ${error.message}.`);
  });
  process.stderr.write(`Wrote ${file}. Next: readback check ${file}\n`);
  return 0;
}

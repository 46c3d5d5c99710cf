/** `readback log`: adds a trial to a plan file, and disturbs nothing else in it. */
import { readFile } from 'node:fs/promises';
import { Refusal } from '../findings/refusal.ts';
import { addTrial } from '../plan/add-trial.ts';
import { inserted } from '../plan/append-entry.ts';
import { decode } from '../plan/decode.ts';
import { readTrialLine } from '../plan/trial-line.ts';
import type { ExitStatus } from './end-with.ts';
import { insertionDiff } from './insertion-diff.ts';
import { loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { replaceFile } from './replace-file.ts';
import { today } from './today.ts';

export interface LogOptions {
  readonly dryRun?: true;
  readonly json?: true;
  readonly today?: string;
  readonly color?: boolean;
}

export async function log(path: string, words: readonly string[], options: LogOptions): Promise<ExitStatus> {
  if (path === '-') throw new Refusal('A trial is written into a file.', 'Name the plan file.');
  const { plan } = await loadSubject(path, options);
  const reading = readTrialLine(words.join(' '), plan, today(options.today));
  if (!reading.ok) throw new Refusal(reading.message, reading.remedy);
  // Decoding drops a byte-order mark, which is put back as it was.
  const bytes = await readFile(path);
  const text = decode(bytes, path);
  const mark = bytes.subarray(0, 3).equals(Buffer.from([0xef, 0xbb, 0xbf])) ? '\uFEFF' : '';
  const insertion = addTrial(text, reading.trial);
  if (insertion === undefined)
    throw new Refusal(
      `${path} is so written that a trial cannot be added without disturbing it.`,
      'Write `trials:` as a list of its own in the plan, then try again. The file is as it was.',
    );
  if (!options.dryRun) await replaceFile(path, mark + inserted(text, insertion));
  if (options.json) {
    process.stdout.write(
      `${JSON.stringify({ plan: path, written: !options.dryRun, trial: reading.trial, insertion }, null, 2)}\n`,
    );
  } else {
    process.stdout.write(insertionDiff(path, text, insertion, palette(process.stdout, options)));
    process.stderr.write(options.dryRun ? 'Nothing was written.\n' : `Written into ${path}.\n`);
  }
  return 0;
}

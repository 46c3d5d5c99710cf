/** `readback compare`: what changed between two revisions, and what each member must enter again. */
import { join, relative } from 'node:path';
import { compareRevisions, type RevisionComparison } from '../audit/compare-revisions.ts';
import { printComparison } from '../audit/print-comparison.ts';
import { spellingIn } from '../documents/change-sheets.ts';
import { english } from '../documents/words.ts';
import { Refusal } from '../findings/refusal.ts';
import type { ExitStatus } from './end-with.ts';
import { type LoadedSubject, loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { columnsOf, displayWidth } from './terminal.ts';
import { writeAll } from './write-all.ts';

export interface CompareOptions {
  readonly json?: true;
  readonly out?: string;
  readonly templates?: string;
  readonly color?: boolean;
}

export async function compare(
  oldPath: string,
  newPath: string,
  options: CompareOptions,
): Promise<ExitStatus> {
  const old = await loadSubject(oldPath, options);
  const now = await loadSubject(newPath, options);
  const comparison = compareRevisions(old, now, spellingIn(english));
  if (options.json) process.stdout.write(`${JSON.stringify(asJson(comparison, old, now), null, 2)}\n`);
  else {
    process.stdout.write(
      printComparison(comparison, {
        title: now.plan.title,
        old: { revision: old.plan.revision, check: old.check },
        now: { revision: now.plan.revision, check: now.check },
        nameOf: (id) => now.plan.members.get(id)?.name ?? old.plan.members.get(id)?.name ?? id,
        width: columnsOf(process.stdout),
        palette: palette(process.stdout, options),
        widthOf: await displayWidth([old.file.text, now.file.text]),
      }),
    );
    if (!comparison.same && now.plan.revision <= old.plan.revision)
      process.stderr.write(
        `The plans differ, and the revision did not go up: it is ${now.plan.revision}, and was ${old.plan.revision}.\n`,
      );
  }
  if (options.out !== undefined) await print(options.out, old, now, options);
  return 0;
}

async function print(
  folder: string,
  old: LoadedSubject,
  now: LoadedSubject,
  options: CompareOptions,
): Promise<void> {
  const { changeSet } = await import('../documents/change-set.ts');
  const { readPress } = await import('./read-press.ts');
  // Paper speaks the language of the plan, the terminal ours.
  const press = await readPress(options.templates, now, options);
  const comparison = compareRevisions(old, now, spellingIn(press.words));
  const { files, flaws } = await changeSet(old, now, comparison, press);
  const [flaw] = flaws;
  if (flaw !== undefined) throw new Refusal(flaw.message, flaw.suggestion ?? 'Nothing was written.');
  await writeAll(folder, files);
  const out = options.json ? process.stderr : process.stdout;
  out.write(`\n${files.size} files in ${relative(process.cwd(), folder) || '.'}\n`);
  for (const name of [...files.keys()].toSorted()) out.write(`  ${join(folder, name)}\n`);
}

function asJson(comparison: RevisionComparison, old: LoadedSubject, now: LoadedSubject): object {
  const head = ({ file, plan, check }: LoadedSubject) => ({
    plan: file.name,
    revision: plan.revision,
    check,
  });
  return {
    old: head(old),
    new: head(now),
    ...comparison,
    radios: comparison.radios.map(({ enter, ...radio }) => ({
      ...radio,
      enter: enter.map(({ all, ...slot }) => ({ ...slot, all: Object.fromEntries(all) })),
    })),
  };
}

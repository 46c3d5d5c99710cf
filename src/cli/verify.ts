/** `readback verify`: which of the kept revisions somebody holds, by the plan check they read out. */
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type KeptRevision, readSpokenCheck, type Verification, verifyCheck } from '../audit/verify-check.ts';
import { Refusal } from '../findings/refusal.ts';
import { wrapText } from '../findings/wrap-text.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { columnsOf, displayWidth } from './terminal.ts';

export interface VerifyOptions {
  readonly json?: true;
  readonly color?: boolean;
}

export async function verify(
  spoken: string,
  paths: readonly string[],
  options: VerifyOptions,
): Promise<ExitStatus> {
  const code = readSpokenCheck(spoken);
  if (code === undefined)
    throw new Refusal(
      `"${spoken}" is no plan check.`,
      'A check is a letter, a figure, a letter and a figure, such as N5L3 or November Five Lima Three.',
    );
  const kept: KeptRevision[] = [];
  for (const path of await planFiles(paths)) {
    const { plan, check } = await loadSubject(path, options);
    kept.push({ file: path, title: plan.title, revision: plan.revision, check });
  }
  const result = verifyCheck(code, kept);
  const [held] = result.exact;
  const isNewest =
    held !== undefined && result.newest !== undefined && held.revision === result.newest.revision;
  if (options.json) process.stdout.write(`${JSON.stringify({ ...result, current: isNewest }, null, 2)}\n`);
  else {
    const { strong, warning } = palette(process.stdout, options);
    const widthOf = await displayWidth(kept.map(({ title, file }) => title + file));
    const lines = words(result, isNewest).map((text) => wrapText(text, columnsOf(process.stdout), widthOf));
    const paint = isNewest ? strong : warning;
    process.stdout.write(
      `${lines.map((line, index) => (index === 0 ? line.map(paint) : line).join('\n')).join('\n')}\n`,
    );
  }
  return isNewest ? 0 : 1;
}

function words({ code, exact, near, newest }: Verification, isNewest: boolean): string[] {
  const told = ({ title, revision, file }: KeptRevision) => `${title}, revision ${revision} (${file})`;
  const [held] = exact;
  const now = newest === undefined ? '' : ` The newest kept is revision ${newest.revision}, ${newest.check}.`;
  if (held !== undefined && isNewest) return [`${code} is ${told(held)}, the newest kept.`];
  const first =
    held === undefined
      ? `${code} is the check of no plan that is kept.${now}`
      : `${code} is ${told(held)}: an older one.${now}`;
  const asks = near.map(({ kept, slip }) => `Near ${kept.check}, ${told(kept)}: ${slip}. Ask again.`);
  return [first, ...(held === undefined ? asks : [])];
}

async function planFiles(paths: readonly string[]): Promise<string[]> {
  const files: string[] = [];
  for (const path of paths) {
    const isFolder = await stat(path).then(
      (found) => found.isDirectory(),
      () => false,
    );
    if (!isFolder) files.push(path);
    else {
      const names = (await readdir(path)).filter((name) => /\.ya?ml$/i.test(name)).toSorted();
      if (names.length === 0)
        throw new Refusal(`${path} holds no .yaml files.`, 'Name the plans that are kept.');
      files.push(...names.map((name) => join(path, name)));
    }
  }
  return files;
}

/** `readback verify`: which of the kept revisions somebody holds, by the plan check they read out. */
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type KeptRevision, readSpokenCheck, type Verification, verifyCheck } from '../audit/verify-check.ts';
import { Refusal } from '../findings/refusal.ts';
import { wrapText } from '../findings/wrap-text.ts';
import { load } from '../plan/load.ts';
import type { Plan } from '../plan/model.ts';
import { planCheck } from '../plan/plan-check.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { readPlanFile } from './read-plan-file.ts';
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
  const { kept, passedOver } = await keptRevisions(paths, options);
  for (const { file, why } of passedOver) process.stderr.write(`Passed over ${file}. ${why}\n`);
  const result = verifyCheck(code, kept);
  const [held] = result.exact;
  const isNewest = held !== undefined && result.newest.some(({ revision }) => revision === held.revision);
  if (options.json) process.stdout.write(`${JSON.stringify({ ...result, current: isNewest }, null, 2)}\n`);
  else {
    const { strong, warning } = palette(process.stdout, options);
    const widthOf = await displayWidth(kept.map(({ title, file }) => title + file));
    const lines = words(result, isNewest, new Set(kept.map(({ title }) => title)).size).map((text) =>
      wrapText(text, columnsOf(process.stdout), widthOf),
    );
    const paint = isNewest ? strong : warning;
    process.stdout.write(
      `${lines.map((line, index) => (index === 0 ? line.map(paint) : line).join('\n')).join('\n')}\n`,
    );
  }
  return isNewest ? 0 : 1;
}

function words({ code, exact, near, newest }: Verification, isNewest: boolean, titles: number): string[] {
  const told = ({ title, revision, file }: KeptRevision) => `${title}, revision ${revision} (${file})`;
  const [held] = exact;
  const kept = titles > 1 ? 'the newest kept of that title' : 'the newest kept';
  if (held !== undefined) {
    if (isNewest) return [`${code} is ${told(held)}, ${kept}.`];
    const now = newest.map(({ revision, check }) => ` The newest kept is revision ${revision}, ${check}.`);
    return [`${code} is ${told(held)}: an older one.${now.join('')}`];
  }
  const now = newest.map(({ title, revision, check }) =>
    titles > 1
      ? ` ${title}: revision ${revision}, ${check}.`
      : ` The newest kept is revision ${revision}, ${check}.`,
  );
  return [
    `${code} is the check of no plan that is kept.${titles > 1 ? ' The newest kept:' : ''}${now.join('')}`,
    ...near.map(({ kept, slip }) => `Near ${kept.check}, ${told(kept)}: ${slip}. Ask again.`),
  ];
}

interface Kept {
  readonly kept: readonly KeptRevision[];
  /** Files of a folder that are not plans, or not any more. */
  readonly passedOver: readonly { readonly file: string; readonly why: string }[];
}

/** A file that was named must be a plan; in a folder lie rules files and lists of entries too. */
async function keptRevisions(paths: readonly string[], options: VerifyOptions): Promise<Kept> {
  const kept: KeptRevision[] = [];
  const passedOver: { file: string; why: string }[] = [];
  const keep = (file: string, plan: Plan) => {
    kept.push({ file, title: plan.title, revision: plan.revision, check: planCheck(plan) });
  };
  for (const path of paths) {
    const found = await stat(path).catch(() => undefined);
    if (!found?.isDirectory()) {
      keep(path, (await loadSubject(path, options)).plan);
      continue;
    }
    for (const name of await plansIn(path)) {
      const file = join(path, name);
      const { plan, findings } = load((await readPlanFile(file, file)).text, file);
      if (plan === undefined) passedOver.push({ file, why: findings[0]?.message ?? 'It is no plan.' });
      else keep(file, plan);
    }
  }
  return { kept, passedOver };
}

async function plansIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isFile() && /\.ya?ml$/i.test(entry.name));
  if (names.length === 0)
    throw new Refusal(`${folder} holds no .yaml files.`, 'Name the plans that are kept.');
  return names.map(({ name }) => name).toSorted();
}

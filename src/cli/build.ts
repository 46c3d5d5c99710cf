/** `readback build`: every document, into a folder, all or nothing. */
import { join, relative } from 'node:path';
import { documentSet } from '../documents/document-set.ts';
import type { PrintFlaw } from '../documents/printer.ts';
import type { Finding } from '../findings/finding.ts';
import { printFindings } from '../findings/print-findings.ts';
import { Refusal } from '../findings/refusal.ts';
import type { SourceText } from '../findings/source-text.ts';
import { type Examined, examine } from '../pipeline.ts';
import { languageFindings } from '../plan/language-findings.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { readBeside, readPlanFile } from './read-plan-file.ts';
import { readPress } from './read-press.ts';
import { columnsOf, displayWidth } from './terminal.ts';
import { today } from './today.ts';
import { writeAll } from './write-all.ts';

export interface BuildOptions {
  readonly out?: string;
  readonly templates?: string;
  readonly since?: string;
  readonly packs?: true;
  readonly testSheet?: true;
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function build(path: string, options: BuildOptions): Promise<ExitStatus> {
  const file = await readPlanFile(path, options.stdinFilename);
  const examined = await examine(file.text, file.name, {
    today: today(options.today),
    read: (beside) => readBeside(file.folder, beside),
    withPaths: true,
  });
  const errors = examined.findings.filter(({ severity }) => severity === 'error');
  if (!examined.whole || errors.length > 0) return refuseToBuild(examined, errors, options);

  const { plan: current } = examined.whole;
  const since = options.since === undefined ? undefined : await loadSubject(options.since, options);
  if (since !== undefined && since.plan.title !== current.title)
    throw new Refusal(
      `${since.file.name} is the plan of "${since.plan.title}", and this one of "${current.title}": what changed from one group's plan to another's is nothing that a member can enter.`,
      'Name an older revision of the same plan; if the group has another name now, give the older revision that title in a copy.',
    );
  if (since !== undefined && since.plan.revision >= current.revision)
    process.stderr.write(
      `${since.file.name} is revision ${since.plan.revision}, and not older than the plan, which is revision ${current.revision}.\n`,
    );

  const { files, flaws } = await documentSet(
    { ...examined.whole, findings: examined.findings, ...(since && { since }) },
    await readPress(options.templates, examined.whole, options),
    { packs: options.packs === true, testSheet: options.testSheet === true },
  );
  if (flaws.length > 0)
    return refuseToBuild(
      examined,
      [...new Map(flaws.map((flaw) => [flaw.letter ?? flaw, flaw])).values()].map((flaw) =>
        flawFinding(flaw, examined),
      ),
      options,
    );

  const folder = options.out ?? join('out', file.stem);
  await writeAll(folder, files);
  const shown = relative(process.cwd(), folder) || '.';
  const manifest = files.get('manifest.json');
  if (options.json && manifest) process.stdout.write(manifest);
  else {
    const { plan, check } = examined.whole;
    process.stdout.write(
      `${plan.title}, revision ${plan.revision}, plan check ${check}: ${files.size} files in ${shown}\n`,
    );
    for (const name of [...files.keys()].toSorted()) process.stdout.write(`  ${join(shown, name)}\n`);
    const others = examined.findings.length;
    // Paths are predicted for the booklet, and a plain check leaves them out.
    const asked = examined.whole.paths ? `check --paths ${path}` : `check ${path}`;
    if (others > 0)
      process.stderr.write(
        `${others === 1 ? '1 finding' : `${others} findings`}, none an error; \`readback ${asked}\` shows ${others === 1 ? 'it' : 'them'}.\n`,
      );
  }
  return 0;
}

async function refuseToBuild(
  examined: Examined,
  findings: readonly Finding[],
  options: BuildOptions,
): Promise<ExitStatus> {
  const texts = new Map(examined.texts.map((text) => [text.file, text]));
  const widthOf = await displayWidth(examined.texts.map(({ text }) => text));
  process.stderr.write(
    `${printFindings(findings, { texts, width: columnsOf(process.stderr), palette: palette(process.stderr, options), widthOf })}` +
      'Nothing was written, and documents of an earlier build are untouched.\n',
  );
  return 1;
}

function flawFinding(
  { kind, at, message, suggestion, letter, words }: PrintFlaw,
  { loaded }: Examined,
): Finding {
  const rule = languageFindings.find(({ id }) => id === `print/${kind}`)?.id ?? `print/${kind}`;
  return {
    rule,
    severity: 'error',
    basis: 'practice',
    message,
    // Words come from anywhere in the plan, and only they themselves say from where.
    ...(writtenAt(letter ?? words, loaded.text) ?? { path: at, place: loaded.placeOf(at, 'key') }),
    ...(suggestion !== undefined && { suggestion }),
  };
}

/** Where the plan first has a letter or words outside a comment; undefined where it has them in another spelling only. */
function writtenAt(
  written: string | undefined,
  source: SourceText,
): Pick<Finding, 'path' | 'place'> | undefined {
  if (written === undefined) return undefined;
  const bare = source.text.replace(/^\s*#.*$/gm, (comment) => ' '.repeat(comment.length));
  const at = bare.indexOf(written);
  return at === -1 ? undefined : { path: [], place: source.placeAt(at, at + written.length) };
}

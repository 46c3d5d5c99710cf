/** `readback build`: every document, into a folder, all or nothing. */
import { readFileSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { documentSet } from '../documents/document-set.ts';
import { type FontBytes, type FontName, fontFiles } from '../documents/print/fonts.ts';
import type { Templates } from '../documents/print/render-template.ts';
import type { PrintFlaw } from '../documents/printer.ts';
import type { Finding } from '../findings/finding.ts';
import { printFindings } from '../findings/print-findings.ts';
import { Refusal } from '../findings/refusal.ts';
import type { SourceText } from '../findings/source-text.ts';
import { type Examined, examine } from '../pipeline.ts';
import { languageFindings } from '../plan/language-findings.ts';
import type { ExitStatus } from './end-with.ts';
import { palette } from './palette.ts';
import { readBeside, readPlanFile } from './read-plan-file.ts';
import { columnsOf, displayWidth } from './terminal.ts';
import { today } from './today.ts';
import { writeAll } from './write-all.ts';

export interface BuildOptions {
  readonly out?: string;
  readonly templates?: string;
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

  const { files, flaws } = await documentSet(
    { ...examined.whole, findings: examined.findings },
    {
      fonts: fontBytes(),
      templates: await readTemplates(options.templates, examined.whole.plan.language),
    },
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

function flawFinding({ kind, at, message, suggestion, letter }: PrintFlaw, { loaded }: Examined): Finding {
  const rule = languageFindings.find(({ id }) => id === `print/${kind}`)?.id ?? `print/${kind}`;
  return {
    rule,
    severity: 'error',
    basis: 'practice',
    message,
    // Words come from anywhere in the plan, and only the letter itself says from where.
    ...(letterAt(letter, loaded.text) ?? { path: at, place: loaded.placeOf(at, 'key') }),
    ...(suggestion !== undefined && { suggestion }),
  };
}

/** Where the plan first has a letter outside a comment; undefined where it has it in another spelling only. */
function letterAt(
  letter: string | undefined,
  source: SourceText,
): Pick<Finding, 'path' | 'place'> | undefined {
  if (letter === undefined) return undefined;
  const bare = source.text.replace(/^\s*#.*$/gm, (comment) => ' '.repeat(comment.length));
  const at = bare.indexOf(letter);
  return at === -1 ? undefined : { path: [], place: source.placeAt(at, at + letter.length) };
}

export function fontBytes(): FontBytes {
  const { resolve } = createRequire(import.meta.url);
  const bytes = (name: FontName) => () => readFileSync(resolve(fontFiles[name]));
  return {
    regular: bytes('regular'),
    bold: bytes('bold'),
    mono: bytes('mono'),
    'mono-bold': bytes('mono-bold'),
    fallback: bytes('fallback'),
    'fallback-bold': bytes('fallback-bold'),
  };
}

/** The program's templates, those of the user's folder in place of the ones with the same name. */
export async function readTemplates(folder: string | undefined, language = 'en'): Promise<Templates> {
  const templates = new Map(await templatesIn(ownTemplates()));
  if (language !== 'en')
    for (const [name, text] of await templatesIn(join(ownTemplates(), language))) templates.set(name, text);
  if (folder !== undefined) {
    const theirs = await templatesIn(folder).catch((error: NodeJS.ErrnoException) => {
      throw new Refusal(
        `The templates in ${folder} could not be read: ${error.message}.`,
        'Name a folder of .hbs files with --templates.',
      );
    });
    const stranger = theirs.find(([name]) => !templates.has(name));
    if (theirs.length === 0)
      throw new Refusal(
        `${folder} holds no .hbs files.`,
        `Copy those you want to change from ${ownTemplates()}.`,
      );
    if (stranger && !stranger[0].startsWith('_')) {
      throw new Refusal(
        `${join(folder, stranger[0])} has the name of no template.`,
        `Templates are ${[...templates.keys()].join(', ')}; a part of your own begins with _.`,
      );
    }
    for (const [name, text] of theirs) templates.set(name, text);
  }
  return templates;
}

async function templatesIn(folder: string): Promise<[string, string][]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.hbs')).toSorted();
  return Promise.all(
    names.map(async (name): Promise<[string, string]> => [name, await readFile(join(folder, name), 'utf8')]),
  );
}

/** The compiled program lies two folders below the package (`out/.program`), as the source does (`src/cli`). */
function ownTemplates(): string {
  return fileURLToPath(new URL('../../templates', import.meta.url));
}

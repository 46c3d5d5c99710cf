/** `readback check`: all findings of one plan or several. */
import type { Finding } from '../findings/finding.ts';
import { findingsJson } from '../findings/findings-json.ts';
import { githubAnnotations } from '../findings/github.ts';
import { type Palette, printFindings } from '../findings/print-findings.ts';
import { sarif } from '../findings/sarif.ts';
import { visibleText } from '../findings/visible-text.ts';
import { wrapText } from '../findings/wrap-text.ts';
import { type Examined, examine } from '../pipeline.ts';
import { describedRules } from './described-rules.ts';
import type { ExitStatus } from './end-with.ts';
import { palette } from './palette.ts';
import { readBeside, readPlanFile } from './read-plan-file.ts';
import { columnsOf, displayWidth } from './terminal.ts';
import { today } from './today.ts';
import { version } from './version.ts';

export interface CheckOptions {
  readonly json?: true;
  readonly format: 'text' | 'json' | 'sarif' | 'github';
  readonly strict?: true;
  readonly quiet?: true;
  readonly paths?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function check(paths: readonly string[], options: CheckOptions): Promise<ExitStatus> {
  const date = today(options.today);
  const examined: Examined[] = [];
  const unpredicted: string[] = [];
  for (const path of paths) {
    const { name, text, folder } = await readPlanFile(path, options.stdinFilename);
    const read = (beside: string) => readBeside(folder, beside);
    const each = await examine(text, name, { today: date, read, withPaths: options.paths === true });
    examined.push(each);
    if (options.paths)
      unpredicted.push(
        ...(await missing(each, read)).map((said) => (paths.length > 1 ? `${name}: ${said}` : said)),
      );
  }
  const shown = (findings: readonly Finding[]) =>
    options.quiet ? findings.filter(({ severity }) => severity === 'error') : findings;
  process.stdout.write(await output(examined, shown, options));
  const width = columnsOf(process.stderr);
  const widthOf = await displayWidth(unpredicted);
  for (const said of unpredicted)
    process.stderr.write(`${wrapText(visibleText(said), width, widthOf).join('\n')}\n`);
  const findings = examined.flatMap((each) => each.findings);
  const failing = findings.some(
    ({ severity }) => severity === 'error' || (options.strict && severity === 'warning'),
  );
  return failing ? 1 : 0;
}

/** What `--paths` could not predict: a rung that no rule looked at must not pass for one that was found good. */
async function missing(
  { whole }: Examined,
  read: (path: string) => Promise<Uint8Array>,
): Promise<readonly string[]> {
  if (!whole) return [];
  const { plan, paths } = whole;
  if (!paths) return ['No path was predicted: the plan names no elevation file (terrain.files).'];
  if (paths.length === 0)
    return ['No path was predicted: none follows from this plan. Members need places, and stations too.'];
  if (paths.every(({ prediction }) => prediction.ok)) return [];
  const { loadGround } = await import('../consequences/load-ground.ts');
  const { pathsMissing } = await import('./paths-missing.ts');
  return pathsMissing(plan, paths, (await loadGround(plan, read)).terrain);
}

async function output(
  examined: readonly Examined[],
  shown: (findings: readonly Finding[]) => readonly Finding[],
  options: CheckOptions,
): Promise<string> {
  const findings = shown(examined.flatMap((each) => each.findings));
  switch (options.json ? 'json' : options.format) {
    case 'json': {
      const checked = examined.map(({ loaded, whole, findings: found }) => ({
        plan: loaded.text.file,
        revision: whole?.plan.revision ?? null,
        check: whole?.check ?? null,
        findings: shown(found),
      }));
      return `${JSON.stringify(findingsJson(checked), null, 2)}\n`;
    }
    case 'sarif':
      return `${JSON.stringify(sarif(findings, describedRules, version), null, 2)}\n`;
    case 'github':
      return githubAnnotations(findings);
    case 'text': {
      const texts = new Map(examined.flatMap(({ texts: read }) => read.map((text) => [text.file, text])));
      const widthOf = await displayWidth([...texts.values()].map(({ text }) => text));
      const painted = palette(process.stdout, options);
      return (
        examined.map((each) => heading(each, painted)).join('') +
        printFindings(findings, { texts, width: columnsOf(process.stdout), palette: painted, widthOf })
      );
    }
  }
}

function heading({ loaded, whole }: Examined, painted: Palette): string {
  if (!whole) return '';
  const { plan, departures } = whole;
  const accepted = departures.length === 0 ? '' : `, ${departures.length} accepted`;
  return `${painted.strong(plan.title)}  revision ${plan.revision}, plan check ${whole.check}${accepted}  ${painted.faint(loaded.text.file)}\n\n`;
}

/** `readback check`: all findings of one plan or several. */
import type { AcceptedFinding } from '../findings/accepted-finding.ts';
import type { Finding } from '../findings/finding.ts';
import { type CheckedPlan, findingsJson } from '../findings/findings-json.ts';
import { githubAnnotations } from '../findings/github.ts';
import { type Palette, printFindings } from '../findings/print-findings.ts';
import { Refusal } from '../findings/refusal.ts';
import { sarif } from '../findings/sarif.ts';
import { visibleText } from '../findings/visible-text.ts';
import { wrapText } from '../findings/wrap-text.ts';
import { type Examined, examine } from '../pipeline.ts';
import { describedRules } from './described-rules.ts';
import { type ExitStatus, refusalText } from './end-with.ts';
import { palette } from './palette.ts';
import { readBeside, readPlanFile } from './read-plan-file.ts';
import { readTwice } from './standard-input.ts';
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

/** A plan with its findings, or why it could not be read. */
type Checked =
  | { readonly plan: string; readonly examined: Examined }
  | { readonly plan: string; readonly refusal: Refusal };

/** Of several plans those that can be read are checked, whatever is the matter with the others. */
export async function check(paths: readonly string[], options: CheckOptions): Promise<ExitStatus> {
  const date = today(options.today);
  if (paths.filter((path) => path === '-').length > 1) throw readTwice();
  const checked: Checked[] = [];
  const unpredicted: string[] = [];
  for (const path of paths) {
    try {
      const { name, text, folder } = await readPlanFile(path, options.stdinFilename);
      const read = (beside: string) => readBeside(folder, beside);
      const examined = await examine(text, name, { today: date, read, withPaths: options.paths === true });
      const unsaid = options.paths ? await missing(examined, read) : [];
      checked.push({ plan: name, examined });
      unpredicted.push(...unsaid.map((said) => (paths.length > 1 ? `${name}: ${said}` : said)));
    } catch (error) {
      if (!(error instanceof Refusal) || paths.length === 1) throw error;
      checked.push({ plan: path === '-' ? options.stdinFilename : path, refusal: error });
    }
  }
  const examined = checked.flatMap((each) => ('examined' in each ? [each.examined] : []));
  if (examined.length > 0) process.stdout.write(await output(checked, examined, options));
  const width = columnsOf(process.stderr);
  const widthOf = await displayWidth(unpredicted);
  for (const said of unpredicted)
    process.stderr.write(`${wrapText(visibleText(said), width, widthOf).join('\n')}\n`);
  for (const each of checked) if ('refusal' in each) process.stderr.write(refusalText(each.refusal));
  if (examined.length < checked.length) return 2;
  const failing = examined
    .flatMap(({ findings }) => findings)
    .some(({ severity }) => severity === 'error' || (options.strict && severity === 'warning'));
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
  checked: readonly Checked[],
  examined: readonly Examined[],
  options: CheckOptions,
): Promise<string> {
  const isListed = ({ severity }: Finding) => !options.quiet || severity === 'error';
  const findings = examined.flatMap((each) => each.findings);
  const accepted = examined.flatMap(acceptedIn);
  switch (options.json ? 'json' : options.format) {
    case 'json':
      return `${JSON.stringify(findingsJson(checked.map(asChecked), isListed), null, 2)}\n`;
    case 'sarif': {
      const extras = {
        accepted: accepted.filter(({ finding }) => isListed(finding)),
        unread: checked.flatMap((each) =>
          'refusal' in each ? [{ plan: each.plan, why: each.refusal.message }] : [],
        ),
      };
      return `${JSON.stringify(sarif(findings.filter(isListed), describedRules, version, extras), null, 2)}\n`;
    }
    case 'github':
      return githubAnnotations(findings.filter(isListed));
    case 'text': {
      const texts = new Map(examined.flatMap(({ texts: read }) => read.map((text) => [text.file, text])));
      const widthOf = await displayWidth([...texts.values()].map(({ text }) => text));
      const painted = palette(process.stdout, options);
      return (
        examined.map((each) => heading(each, painted)).join('') +
        printFindings(findings, {
          ...{ texts, width: columnsOf(process.stdout), palette: painted, widthOf },
          accepted,
          quiet: options.quiet === true,
        })
      );
    }
  }
}

function acceptedIn({ loaded, whole }: Examined): readonly AcceptedFinding[] {
  return (whole?.departures ?? []).map(({ finding, acceptance: { because, until }, index }) => ({
    finding,
    because,
    until,
    acceptedAt: loaded.placeOf(['accepted', index]),
  }));
}

function asChecked(checked: Checked): CheckedPlan {
  if ('refusal' in checked) {
    const nothing = { revision: null, check: null, findings: [], accepted: [] };
    return { plan: checked.plan, ...nothing, unread: checked.refusal.message };
  }
  const { loaded, whole, findings } = checked.examined;
  return {
    plan: loaded.text.file,
    revision: whole?.plan.revision ?? null,
    check: whole?.check ?? null,
    findings,
    accepted: acceptedIn(checked.examined),
  };
}

function heading({ loaded, whole }: Examined, painted: Palette): string {
  if (!whole) return '';
  const { plan, departures } = whole;
  const accepted = departures.length === 0 ? '' : `, ${departures.length} accepted`;
  return `${painted.strong(plan.title)}  revision ${plan.revision}, plan check ${whole.check}${accepted}  ${painted.faint(loaded.text.file)}\n\n`;
}

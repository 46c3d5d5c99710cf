/** The rules a plan names: a country's, from those there are or from a file, then files of local coordination that add to them. */
import type { Finding } from '../findings/finding.ts';
import { Refusal } from '../findings/refusal.ts';
import type { SourceText } from '../findings/source-text.ts';
import { countries, countryByCode } from '../regulations/countries.ts';
import type { Country } from '../regulations/country.ts';
import type { Law, LocalRules } from '../regulations/law.ts';
import { decode } from './decode.ts';
import type { LoadedPlan } from './load.ts';
import type { Plan } from './model.ts';
import type { RulesFile } from './rules-file.ts';

export interface LawOutcome {
  /** Absent where any of the rules could not be had: half the rules would say that a plan is sound when it is not. */
  readonly law?: Law;
  readonly findings: readonly Finding[];
  /** Of the rules files, for showing where in them a finding lies. */
  readonly texts: readonly SourceText[];
}

/** @param world reads the rules files, by their path from the plan's folder; throws a {@link Refusal} where it cannot */
export async function lawOf(
  plan: Plan,
  loaded: LoadedPlan,
  world: { read(path: string): Promise<Uint8Array> },
): Promise<LawOutcome> {
  const findings: Finding[] = [];
  const texts: SourceText[] = [];
  const complain = (index: number, message: string, suggestion?: string) => {
    const path = plan.rules.length > 1 ? ['plan', 'rules', index] : ['plan', 'rules'];
    findings.push({
      ...{ rule: 'plan/unknown-rules', severity: 'error', basis: 'consistency', message, path },
      place: loaded.placeOf(path),
      ...(suggestion !== undefined && { suggestion }),
    });
  };
  const read = async (index: number, name: string): Promise<RulesFile | undefined> => {
    try {
      const content = decode(await world.read(name), name);
      const { rulesFile } = await import('./rules-file.ts');
      const file = rulesFile(content, beside(loaded.text.file, name));
      texts.push(file.text);
      findings.push(...file.findings);
      return file;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      complain(index, error.message);
      return undefined;
    }
  };

  const [first, ...others] = plan.rules;
  let country: Country | undefined;
  if (isFile(first)) {
    const file = await read(0, first);
    if (file?.rules?.scope === 'country') country = file.rules.country;
    else if (file?.rules)
      complain(
        0,
        `\`${first}\` holds local rules, which add to those of a country; \`rules\` begins with the country.`,
        `[us, ${first}]`,
      );
  } else {
    country = await countryByCode(first);
    if (!country) {
      const codes = countries.map(({ code }) => code);
      const message = `There are no rules for \`${first}\`; there are rules for ${codes.join(', ')}.`;
      complain(0, message, codeMeant(first));
    }
  }
  const local: LocalRules[] = [];
  for (const [k, name] of others.entries()) {
    if (plan.rules.indexOf(name) <= k) {
      complain(k + 1, `\`${name}\` stands twice under \`rules\`; once is enough.`);
      continue;
    }
    if (!isFile(name)) {
      const message = (await countryByCode(name))
        ? `\`${name}\` is a second country; a plan has the rules of one, and after it files of local coordination.`
        : `\`${name}\` is not a rules file; their names end in .yaml.`;
      complain(k + 1, message);
      continue;
    }
    const file = await read(k + 1, name);
    if (file?.rules?.scope === 'country')
      complain(
        k + 1,
        `\`${name}\` holds the rules of a country; those stand first, and only local rules after them.`,
      );
    else if (file?.rules) {
      if (country) findings.push(...file.rules.flaws(country));
      local.push(file.rules.local);
    }
  }
  return { ...(country && findings.length === 0 && { law: { country, local } }), findings, texts };
}

/** Any two letters are one slip from those of some other country (`uk` from `us`), so only what is known for certain. */
function codeMeant(written: string): string | undefined {
  const word = written.toLowerCase();
  const also = new Map([
    ['uk', 'gb'],
    ['usa', 'us'],
  ]);
  return (
    also.get(word) ?? countries.find(({ code, name }) => code === word || name.toLowerCase() === word)?.code
  );
}

function isFile(name: string): boolean {
  return /\.ya?ml$/i.test(name);
}

/** The name of a file as findings show it, given the name of the plan it lies beside. */
function beside(plan: string, name: string): string {
  return `${plan.slice(0, Math.max(plan.lastIndexOf('/'), plan.lastIndexOf('\\')) + 1)}${name.replace(/^(\.\/)+/, '')}`;
}

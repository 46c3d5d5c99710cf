/** The rules a plan names: a country's, then files of local coordination that add to them. */
import type { Finding } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import { countries, countryByCode } from '../regulations/countries.ts';
import type { Law } from '../regulations/law.ts';
import type { LoadedPlan } from './load.ts';
import type { Plan } from './model.ts';

export interface LawOutcome {
  readonly law?: Law;
  readonly findings: readonly Finding[];
}

/** @param world reads the rules files, by their path from the plan's folder */
export async function lawOf(
  plan: Plan,
  loaded: LoadedPlan,
  _world: { read(path: string): Promise<Uint8Array> },
): Promise<LawOutcome> {
  const [code] = plan.rules;
  const country = await countryByCode(code);
  if (!country) {
    const codes = countries.map((entry) => entry.code);
    const near = nearest(code, codes);
    const finding: Finding = {
      rule: 'plan/unknown-rules',
      severity: 'error',
      basis: 'consistency',
      message: `There are no rules for \`${code}\`; there are rules for ${codes.join(', ')}.`,
      path: ['plan', 'rules'],
      place: loaded.placeOf(['plan', 'rules']),
      ...(near !== undefined && { suggestion: near }),
    };
    return { findings: [finding] };
  }
  return { law: { country, local: [] }, findings: [] };
}

/**
 * Runs every rule over a plan and gives each observation its place, severity and source. Acceptances are
 * applied to what was found; rules about acceptances then run over what became of them.
 */
import { compareFindings, type Finding, type Observation } from '../findings/finding.ts';
import type { LoadedPlan } from '../plan/load.ts';
import { type Sifted, sift } from './acceptance.ts';
import { allRules } from './all-rules.ts';
import type { Rule, RuleContext } from './rule.ts';

export function runChecks(
  plain: Omit<RuleContext, 'idle' | 'ruleIds'>,
  placeOf: LoadedPlan['placeOf'],
  rules: readonly Rule[] = allRules,
): Sifted {
  const asked = { ...plain, ruleIds: rules.map((rule) => rule.id) };
  const found = (context: RuleContext): readonly Finding[] =>
    rules.flatMap((rule) => [...rule.check(context)].map((seen) => toFinding(rule, seen, placeOf)));
  const sifted = sift(
    found({ ...asked, idle: [] }).toSorted(compareFindings),
    asked.plan.accepted,
    asked.today,
  );
  if (sifted.idle.length === 0) return sifted;
  const aboutAcceptances = rules
    .filter((rule) => rule.id.startsWith('accepted/'))
    .flatMap((rule) =>
      [...rule.check({ ...asked, idle: sifted.idle })].map((seen) => toFinding(rule, seen, placeOf)),
    );
  return { ...sifted, findings: [...sifted.findings, ...aboutAcceptances].toSorted(compareFindings) };
}

function toFinding(rule: Rule, seen: Observation, placeOf: LoadedPlan['placeOf']): Finding {
  return {
    rule: rule.id,
    severity: rule.severity,
    basis: rule.basis,
    message: seen.message,
    path: seen.at,
    place: placeOf(seen.at, seen.points),
    source: seen.source ?? rule.sources[0],
    ...(seen.suggestion !== undefined && { suggestion: seen.suggestion }),
  };
}

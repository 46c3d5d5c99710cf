/**
 * Runs every rule over a plan and gives each observation its place, severity and source. Acceptances are
 * applied to what was found; rules about acceptances then run over what became of them.
 */
import { compareFindings, type Finding, type Observation } from '../findings/finding.ts';
import { languageFindings } from '../plan/language-findings.ts';
import type { LoadedPlan } from '../plan/load.ts';
import { type Sifted, sift } from './acceptance.ts';
import { allRules } from './all-rules.ts';
import type { Rule, RuleContext } from './rule.ts';

export function runChecks(
  plain: Omit<RuleContext, 'idle' | 'departures' | 'ruleIds'>,
  placeOf: LoadedPlan['placeOf'],
  rules: readonly Rule[] = allRules,
): Sifted {
  const ruleIds = [...rules, ...languageFindings].map(({ id }) => id);
  const asked = { ...plain, ruleIds };
  const running = rules.filter((rule) => rule.needs === undefined || plain[rule.needs] !== undefined);
  const found = (context: RuleContext): readonly Finding[] =>
    running.flatMap((rule) => [...rule.check(context)].map((seen) => toFinding(rule, seen, placeOf)));
  const sifted = sift(
    found({ ...asked, idle: [], departures: [] }).toSorted(compareFindings),
    asked.plan.accepted,
    asked.today,
  );
  // What a rule that did not run might have found cannot be said to match nothing.
  const resting = new Set(rules.filter((rule) => !running.includes(rule)).map(({ id }) => id));
  const idle = sifted.idle.filter(({ index }) => !resting.has(asked.plan.accepted[index]?.rule ?? ''));
  if (asked.plan.accepted.length === 0) return { ...sifted, idle };
  const { departures } = sifted;
  const aboutAcceptances = rules
    .filter((rule) => rule.id.startsWith('accepted/'))
    .flatMap((rule) =>
      [...rule.check({ ...asked, idle, departures })].map((seen) => toFinding(rule, seen, placeOf)),
    );
  return { ...sifted, idle, findings: [...sifted.findings, ...aboutAcceptances].toSorted(compareFindings) };
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

/**
 * What a group has looked at and keeps: an accepted finding becomes a listed departure until its date. An
 * error of basis `law` stays; an acceptance that is out of date or matches nothing is itself a finding.
 */
import { type Finding, pathText } from '../findings/finding.ts';
import type { Acceptance } from '../plan/model.ts';

export interface Departure {
  readonly finding: Finding;
  readonly acceptance: Acceptance;
  /** Position of the acceptance in the plan's list. */
  readonly index: number;
}

export interface Sifted {
  /** Findings that stand. */
  readonly findings: readonly Finding[];
  readonly departures: readonly Departure[];
  /** Acceptances that did nothing. */
  readonly idle: readonly IdleAcceptance[];
}

export type IdleAcceptance =
  | {
      /** Position in the plan's list. */
      readonly index: number;
      readonly why: 'matches nothing' | 'out of date' | 'law';
    }
  | {
      readonly index: number;
      readonly why: 'accepted already';
      /** The entry that accepts the same. */
      readonly by: number;
    };

/**
 * Of several acceptances that cover a finding the narrowest holds, and of those the first.
 * @param today ISO date; an acceptance holds through its last day
 */
export function sift(findings: readonly Finding[], accepted: readonly Acceptance[], today: string): Sifted {
  const stand: Finding[] = [];
  const departures: Departure[] = [];
  const reasons = new Map<number, IdleAcceptance>();
  const entries = accepted
    .map((acceptance, index) => ({ acceptance, index }))
    .sort((a, b) => b.acceptance.at.length - a.acceptance.at.length);
  for (const finding of findings) {
    const covering = entries.filter(
      ({ acceptance: { rule, at } }) => rule === finding.rule && covers(at, pathText(finding.path)),
    );
    const isLaw = finding.basis === 'law' && finding.severity === 'error';
    const holding = isLaw ? [] : covering.filter(({ acceptance }) => acceptance.until >= today);
    const [used, ...others] = holding;
    for (const { index } of covering)
      if (!holding.some((entry) => entry.index === index))
        reasons.set(index, { index, why: isLaw ? 'law' : 'out of date' });
    if (used === undefined) {
      stand.push(finding);
      continue;
    }
    departures.push({ finding, ...used });
    for (const { index } of others) reasons.set(index, { index, why: 'accepted already', by: used.index });
  }
  const active = new Set(departures.map(({ index }) => index));
  const idle = accepted.flatMap((_, index) =>
    active.has(index) ? [] : [reasons.get(index) ?? { index, why: 'matches nothing' as const }],
  );
  return { findings: stand, departures, idle };
}

/** `repeaters.gap` covers `repeaters.gap.offset`, and itself. */
function covers(accepted: string, path: string): boolean {
  return path === accepted || path.startsWith(`${accepted}.`);
}

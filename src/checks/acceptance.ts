/**
 * What a group has looked at and keeps: an accepted finding becomes a listed departure until its date. An
 * error of basis `law` stays; an acceptance that is out of date or matches nothing is itself a finding.
 */
import { type Finding, pathText } from '../findings/finding.ts';
import type { Acceptance } from '../plan/model.ts';

export interface Departure {
  readonly finding: Finding;
  readonly acceptance: Acceptance;
}

export interface Sifted {
  /** Findings that stand. */
  readonly findings: readonly Finding[];
  readonly departures: readonly Departure[];
  /** Acceptances that did nothing. */
  readonly idle: readonly IdleAcceptance[];
}

export interface IdleAcceptance {
  /** Position in the plan's list. */
  readonly index: number;
  readonly why: 'matches nothing' | 'out of date' | 'law';
}

/** @param today ISO date; an acceptance holds through its last day */
export function sift(findings: readonly Finding[], accepted: readonly Acceptance[], today: string): Sifted {
  const stand: Finding[] = [];
  const departures: Departure[] = [];
  const reasons = new Map<number, 'out of date' | 'law'>();
  const used = new Set<number>();
  for (const finding of findings) {
    const index = accepted.findIndex(
      (entry) => entry.rule === finding.rule && covers(entry.at, pathText(finding.path)),
    );
    const acceptance = accepted[index];
    if (acceptance === undefined) {
      stand.push(finding);
    } else if (finding.basis === 'law' && finding.severity === 'error') {
      reasons.set(index, 'law');
      stand.push(finding);
    } else if (acceptance.until < today) {
      reasons.set(index, 'out of date');
      stand.push(finding);
    } else {
      used.add(index);
      departures.push({ finding, acceptance });
    }
  }
  const idle = accepted.flatMap((_, index) =>
    used.has(index) ? [] : [{ index, why: reasons.get(index) ?? ('matches nothing' as const) }],
  );
  return { findings: stand, departures, idle };
}

/** `repeaters.gap` covers `repeaters.gap.offset`, and itself. */
function covers(accepted: string, path: string): boolean {
  return path === accepted || path.startsWith(`${accepted}.`);
}

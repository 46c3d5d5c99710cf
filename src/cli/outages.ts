/** `readback outages`: what is lost, and who is cut off, when one thing fails or two. */
import type { Outage, Outages } from '../consequences/outages.ts';
import type { SharedPoints } from '../consequences/shared-points.ts';
import type { ExitStatus } from './end-with.ts';
import { type LoadedSubject, loadSubject } from './load-subject.ts';
import { outagesText } from './outages-text.ts';

export interface OutagesOptions {
  readonly two?: true;
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function outages(path: string, options: OutagesOptions): Promise<ExitStatus> {
  const whole = await loadSubject(path, options);
  const found = whole.consequences.outages();
  const points = whole.consequences.sharedPoints();
  process.stdout.write(
    options.json
      ? `${JSON.stringify(outagesJson(path, whole, found, points, options), null, 2)}\n`
      : await outagesText(whole, found, points, options),
  );
  return 0;
}

function outagesJson(
  path: string,
  { plan, check }: LoadedSubject,
  { single, double }: Outages,
  { shared, parts, splits, oneChannel }: SharedPoints,
  { two }: OutagesOptions,
): object {
  return {
    plan: path,
    revision: plan.revision,
    check,
    single: single.map(outageJson),
    ...(two && { double: double.map(outageJson) }),
    shared: shared.map(({ ladder, thing, rungs }) => ({
      ladder,
      thing: { kind: thing.kind, id: thing.id },
      rungs: rungs.map((index) => index + 1),
    })),
    parts,
    splits: splits.map(({ thing, parts: left }) => ({
      thing: { kind: thing.kind, id: thing.id },
      parts: left,
    })),
    oneChannel,
  };
}

/** Rungs are counted from 1, as people count them; minutes are from the failure. */
function outageJson({ failed, stopped, checkIns, members }: Outage): object {
  return {
    failed: failed.map(({ kind, id, name }) => ({ kind, id, name })),
    stopped: stopped.map(({ what, afterMin }) => ({ kind: what.kind, id: what.id, afterMin })),
    checkIns: checkIns.map(({ what, afterMin }) => ({ checkIn: what, afterMin })),
    members: members.map(({ member, rungs, standing, left }) => ({
      member,
      standing: standing?.what ?? 'on the air',
      afterMin: standing?.afterMin ?? null,
      rungsLost: rungs.map(({ what, afterMin }) => ({
        ladder: what.ladder,
        rung: what.index + 1,
        afterMin,
      })),
      rungsWithoutRadioLeft: left.map(({ ladder, index }) => ({ ladder, rung: index + 1 })),
    })),
  };
}

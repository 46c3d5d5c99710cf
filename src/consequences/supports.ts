/** What hangs on what: everything of a plan that can fail and take others with it, and what each needs. */
import type { PlanPath } from '../findings/finding.ts';
import type { Plan } from '../plan/model.ts';

/** Something that can depend on others: an asset, a repeater, a mailbox or a digipeater. */
export interface Dependent {
  readonly id: string;
  readonly name: string;
  readonly path: PlanPath;
  readonly dependsOn: readonly string[];
}

/** In the order assets, repeaters, mailboxes, digipeaters, each in the order of the plan. */
export function* dependents(plan: Plan): Generator<Dependent> {
  const sections = [
    [['assets'], plan.assets],
    [['repeaters'], plan.repeaters],
    [['packet', 'mailboxes'], plan.mailboxes],
    [['packet', 'digipeaters'], plan.digipeaters],
  ] as const;
  for (const [section, entries] of sections) {
    for (const { id, name, dependsOn } of entries.values())
      yield { id, name, path: [...section, id], dependsOn };
  }
}

/** Everything some ids need to work: they themselves, what they depend on, and so on down. */
export function supportsOf(all: ReadonlyMap<string, Dependent>, ids: readonly string[]): ReadonlySet<string> {
  const needed = new Set<string>();
  const waiting = [...ids];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (needed.has(id)) continue;
    needed.add(id);
    waiting.push(...(all.get(id)?.dependsOn ?? []));
  }
  return needed;
}

/** Circles of two or more that depend on each other, each once, told from its first in the order given. */
export function circles(all: ReadonlyMap<string, Dependent>): readonly (readonly Dependent[])[] {
  const found: Dependent[][] = [];
  const done = new Set<string>();
  for (const start of all.keys()) {
    // Walked with a stack of our own: a chain of ten thousand must not exhaust the call stack.
    const trail: { id: string; next: number }[] = [];
    const places = new Map<string, number>();
    const enter = (id: string): void => {
      const at = places.get(id);
      if (at === undefined) {
        if (done.has(id) || !all.has(id)) return;
        places.set(id, trail.length);
        trail.push({ id, next: 0 });
        return;
      }
      const circle = trail.slice(at).flatMap((step) => all.get(step.id) ?? []);
      if (circle.length > 1) found.push(circle);
    };
    enter(start);
    for (let step = trail.at(-1); step !== undefined; step = trail.at(-1)) {
      const next = all.get(step.id)?.dependsOn[step.next];
      step.next += 1;
      if (next !== undefined) {
        enter(next);
      } else {
        done.add(step.id);
        places.delete(step.id);
        trail.pop();
      }
    }
  }
  return found;
}

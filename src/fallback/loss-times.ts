/**
 * How long after a failure each thing that hangs on it stops. A thing runs as long as everything it depends
 * on, and then for as long as its own battery or fuel lasts; so it is lost by the shortest way from what
 * failed, each step as long as the backup of what is reached.
 *
 * E. W. Dijkstra, A note on two problems in connexion with graphs, Numerische Mathematik 1 (1959), 269-271.
 */

export interface Dependence {
  readonly id: string;
  readonly dependsOn: readonly string[];
  /** How long it runs on after what it depends on is lost, minutes. */
  readonly backupMin: number;
}

/**
 * Minutes until each is lost, in the order they are lost; what failed is lost at 0, whatever its backup, and
 * what keeps running is not in it.
 */
export function lossTimes(all: Iterable<Dependence>, failed: Iterable<string>): ReadonlyMap<string, number> {
  const dependents = new Map<string, Dependence[]>();
  for (const each of all) {
    for (const needed of each.dependsOn) {
      const known = dependents.get(needed);
      if (known) known.push(each);
      else dependents.set(needed, [each]);
    }
  }
  const lost = new Map<string, number>();
  const waiting = new Queue();
  for (const id of failed) waiting.add(id, 0);
  for (let next = waiting.take(); next !== undefined; next = waiting.take()) {
    const { id, atMin } = next;
    if (lost.has(id)) continue;
    lost.set(id, atMin);
    for (const dependent of dependents.get(id) ?? [])
      if (!lost.has(dependent.id)) waiting.add(dependent.id, atMin + dependent.backupMin);
  }
  return lost;
}

interface Loss {
  readonly id: string;
  readonly atMin: number;
}

/** What comes first is taken first: a binary heap, each above no later than the two below it. */
class Queue {
  readonly #heap: Loss[] = [];

  add(id: string, atMin: number): void {
    const heap = this.#heap;
    let at = heap.length;
    heap.push({ id, atMin });
    while (at > 0) {
      const above = (at - 1) >> 1;
      if ((heap[above]?.atMin ?? 0) <= atMin) break;
      this.#swap(at, above);
      at = above;
    }
  }

  take(): Loss | undefined {
    const heap = this.#heap;
    const first = heap[0];
    const last = heap.pop();
    if (first === undefined || last === undefined || heap.length === 0) return first;
    heap[0] = last;
    for (let at = 0; ; ) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      const below = this.#timeOf(right) < this.#timeOf(left) ? right : left;
      if (this.#timeOf(below) >= last.atMin) return first;
      this.#swap(at, below);
      at = below;
    }
  }

  #timeOf(at: number): number {
    return this.#heap[at]?.atMin ?? Number.POSITIVE_INFINITY;
  }

  #swap(one: number, other: number): void {
    const [a, b] = [this.#heap[one], this.#heap[other]];
    if (a === undefined || b === undefined) return;
    this.#heap[one] = b;
    this.#heap[other] = a;
  }
}

/**
 * An order of things that are done one after another, each at a cost that depends on what was done before it.
 * Exact up to eleven (M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, 1962); beyond
 * that the nearest next, mended by moving one at a time to a better place; beyond two hundred as given.
 */
export interface Order {
  readonly order: readonly number[];
  readonly cost: number;
}

type Cost = (from: number | undefined, to: number) => number;

export function shortestOrder(count: number, cost: Cost): Order {
  const given = Array.from({ length: count }, (_, at) => at);
  if (count < 2 || count > 200) return { order: given, cost: costOf(given, cost) };
  // Costs are asked for again and again.
  const table = [undefined, ...given].map((from) => given.map((to) => cost(from, to)));
  const known: Cost = (from, to) => table[from === undefined ? 0 : from + 1]?.[to] ?? 0;
  const order =
    count <= 11
      ? exact(count, known)
      : [mended(given, known), mended(nearestNext(count, known), known)].toSorted(
          (a, b) => costOf(a, known) - costOf(b, known),
        )[0];
  const found = order ?? given;
  // Of equal orders the one that is printed already.
  return costOf(given, known) <= costOf(found, known)
    ? { order: given, cost: costOf(given, known) }
    : { order: found, cost: costOf(found, known) };
}

function costOf(order: readonly number[], cost: Cost): number {
  return order.reduce((total, to, at) => total + cost(order[at - 1], to), 0);
}

function exact(count: number, cost: Cost): readonly number[] {
  const sets = 1 << count;
  const least = new Float64Array(sets * count).fill(Number.POSITIVE_INFINITY);
  const cameFrom = new Int8Array(sets * count).fill(-1);
  for (let last = 0; last < count; last += 1) least[(1 << last) * count + last] = cost(undefined, last);
  for (let done = 1; done < sets; done += 1) {
    for (let last = 0; last < count; last += 1) {
      const here = least[done * count + last] ?? Number.POSITIVE_INFINITY;
      if (!Number.isFinite(here)) continue;
      for (let next = 0; next < count; next += 1) {
        if (done & (1 << next)) continue;
        const at = (done | (1 << next)) * count + next;
        const there = here + cost(last, next);
        if (there < (least[at] ?? 0)) {
          least[at] = there;
          cameFrom[at] = last;
        }
      }
    }
  }
  let done = sets - 1;
  let last = 0;
  for (let each = 1; each < count; each += 1)
    if ((least[done * count + each] ?? 0) < (least[done * count + last] ?? 0)) last = each;
  const order: number[] = [];
  while (last !== -1) {
    order.unshift(last);
    const before = cameFrom[done * count + last] ?? -1;
    done &= ~(1 << last);
    last = before;
  }
  return order;
}

function nearestNext(count: number, cost: Cost): readonly number[] {
  const left = new Set(Array.from({ length: count }, (_, at) => at));
  const order: number[] = [];
  while (left.size > 0) {
    let next = -1;
    for (const each of left)
      if (next === -1 || cost(order.at(-1), each) < cost(order.at(-1), next)) next = each;
    left.delete(next);
    order.push(next);
  }
  return order;
}

function mended(start: readonly number[], cost: Cost): readonly number[] {
  let order = [...start];
  for (let round = 0; round < 20; round += 1) {
    let better = false;
    for (let from = 0; from < order.length; from += 1) {
      const [moved = 0] = order.slice(from, from + 1);
      const rest = order.toSpliced(from, 1);
      const without =
        cost(order[from - 1], moved) +
        next(cost, moved, order[from + 1]) -
        next(cost, order[from - 1], order[from + 1]);
      let [place, least] = [from, without];
      for (let to = 0; to <= rest.length; to += 1) {
        const added =
          cost(rest[to - 1], moved) + next(cost, moved, rest[to]) - next(cost, rest[to - 1], rest[to]);
        if (added < least) [place, least] = [to, added];
      }
      if (least < without) {
        order = rest.toSpliced(place, 0, moved);
        better = true;
      }
    }
    if (!better) return order;
  }
  return order;
}

function next(cost: Cost, from: number | undefined, to: number | undefined): number {
  return to === undefined ? 0 : cost(from, to);
}

/**
 * Pairs of failures that do the same, in few lines: `FAMILY together with one of NEIGHB, Turkey Knob, Valley
 * power feeder (after 8 h)`. The thing that most of the pairs left share comes first.
 */
import type { Outage } from '../consequences/outages.ts';
import { span } from '../documents/figures.ts';

/** @param alike outages of two failures each that leave the same members in the same standing */
export function failurePairs(alike: readonly Outage[]): readonly string[] {
  let rest = alike.flatMap(({ failed, members }) => {
    const [one, other] = failed;
    const afterMin = Math.max(...members.map(({ standing }) => standing?.afterMin ?? 0));
    return other === undefined
      ? []
      : [
          {
            names: [one, other].map(({ name, kind }) => (kind === 'member' ? `${name} away` : name)),
            afterMin,
          },
        ];
  });
  const texts: string[] = [];
  while (rest.length > 0) {
    const counts = new Map<string, number>();
    for (const { names } of rest) for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
    const [hub = ''] = [...counts].toSorted((a, b) => b[1] - a[1])[0] ?? [];
    const partners = rest
      .filter(({ names }) => names.includes(hub))
      .map(
        ({ names, afterMin }) =>
          `${names.find((name) => name !== hub) ?? hub}${afterMin === 0 ? '' : ` (after ${span(afterMin)})`}`,
      );
    texts.push(
      `${hub} together with ${partners.length > 1 ? `one of ${partners.join(', ')}` : partners.join()}`,
    );
    rest = rest.filter(({ names }) => !names.includes(hub));
  }
  return texts;
}

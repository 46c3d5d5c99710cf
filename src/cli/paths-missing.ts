/** Which paths could not be predicted for want of ground, in sentences, so that none drops out in silence. */
import type { RadioPath } from '../consequences/paths.ts';
import type { Plan } from '../plan/model.ts';
import type { Terrain } from '../reach/mosaic.ts';

/** More pairs of places than this are counted, not named. */
const mostNamed = 3;

/**
 * Empty where every path was predicted. A place that no file covers is named once for all its paths; other paths by both
 * their ends.
 */
export function pathsMissing(plan: Plan, paths: readonly RadioPath[], terrain: Terrain): readonly string[] {
  // With ground under it, what is missing is a transmitter.
  const missing = paths.filter(({ prediction, profile }) => !prediction.ok && profile === undefined);
  if (missing.length === 0) return [];
  if (plan.terrain.files.length === 0) {
    const why = 'the plan names no elevation file (terrain.files)';
    if (missing.length === paths.length) return [`No path was predicted: ${why}.`];
    return [`Not predicted: ${missing.length} of ${paths.length} paths; ${why}.`];
  }
  const nameOf = (id: string) => plan.places.get(id)?.name ?? id;
  const isCovered = (id: string) => {
    const place = plan.places.get(id);
    return place !== undefined && terrain.heightM(place.at) !== undefined;
  };
  const bare = new Set<string>();
  const holed = new Set<string>();
  for (const { from, to } of missing) {
    const outside = [from.place, to.place].filter((id) => !isCovered(id));
    for (const id of outside) bare.add(nameOf(id));
    if (outside.length === 0) holed.add([from.place, to.place].map(nameOf).toSorted().join(' and '));
  }
  return [
    ...(bare.size > 0
      ? [`Not predicted: paths from and to ${inWords([...bare])}, which no elevation file covers.`]
      : []),
    ...(holed.size > 0
      ? [`Not predicted: paths between ${named([...holed])}; the elevation files have a hole between them.`]
      : []),
  ];
}

function named(pairs: readonly string[]): string {
  const more = pairs.length - mostNamed;
  return `${pairs.slice(0, mostNamed).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

function inWords(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

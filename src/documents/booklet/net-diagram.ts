/**
 * Who hangs on which station: members on the right, the channels of their ladders and check-ins in the middle,
 * what those need on the left. First calls have thick lines, later rungs thin dashed ones;
 * a dotted line goes to a channel that the member may only listen to.
 */
import type { Consequences } from '../../consequences/consequences.ts';
import type { Plan } from '../../plan/model.ts';
import type { Scene, Shape } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';
import { type FigureName, linesOf, heightMm as nameHeightMm, nameShapes } from './figure-words.ts';

const widthMm = 180;
const rowMm = 6.5;
/** What a page holds beside a heading and the words below the picture; the rows move together before it is too tall. */
const tallestMm = 205;
const columns = { needs: 0, stations: 66, members: 136 } as const;
/** Between the columns lines run from name to name. */
const roomMm = 44;
const sizePt = 9;

export function netDiagram(
  plan: Plan,
  consequences: Consequences,
  alt: string,
  measure: Measure,
): Scene | undefined {
  const links = [...plan.members.keys()].flatMap((member) => linksOf(plan, consequences, member));
  const slots = [...new Set(links.map(({ slot }) => slot))].toSorted((a, b) => a - b);
  const members = [...plan.members.keys()].filter((id) => links.some(({ member }) => member === id));
  const needed = slots.map((slot) => ({ slot, needs: needsOf(plan, slot) }));
  const needs = [...new Set(needed.flatMap((one) => one.needs))];
  const named = (text: string, strong = false): FigureName => ({ text, sizePt, strong, roomMm });
  const sides = {
    needs: needs.map((need) => named(need)),
    stations: slots.map((slot) => named(stationOf(plan, slot), true)),
    members: members.map((id) => named(plan.members.get(id)?.name ?? id)),
  };
  const sizes = Object.values(sides).map((names) => {
    const lines = Math.max(1, ...names.map((name) => linesOf(name, measure).length));
    return { rows: names.length, nameMm: nameHeightMm(lines, sizePt) };
  });
  // Where rows would touch the picture is left out: the tables beside it say the same.
  const leastMm = Math.max(...sizes.map(({ rows, nameMm }) => rows * nameMm));
  if (slots.length === 0 || leastMm > tallestMm) return undefined;
  const wantedMm = Math.max(...sizes.map(({ rows, nameMm }) => rows * Math.max(rowMm, nameMm + 2)));
  const heightMm = Math.min(wantedMm, tallestMm) + 1;
  const yOf = (list: readonly unknown[], index: number) => ((index + 0.5) * heightMm) / list.length;
  const shapes: Shape[] = [];
  for (const { member, slot, kind } of links) {
    const from = [columns.members - 1, yOf(members, members.indexOf(member))] as const;
    const to = [columns.stations + 45, yOf(slots, slots.indexOf(slot))] as const;
    shapes.push({
      kind: 'line',
      points: [to, from],
      ...strokes[kind],
    });
  }
  for (const { slot, needs: own } of needed)
    for (const need of own)
      shapes.push({
        kind: 'line',
        points: [
          [columns.needs + 46, yOf(needs, needs.indexOf(need))],
          [columns.stations - 2, yOf(slots, slots.indexOf(slot))],
        ],
        widthMm: 0.3,
      });
  for (const side of ['needs', 'stations', 'members'] as const)
    sides[side].forEach((name, index) => {
      shapes.push(...nameShapes(columns[side], yOf(sides[side], index), name, measure));
    });
  return { widthMm, heightMm, alt, shapes };
}

interface Link {
  readonly member: string;
  readonly slot: number;
  readonly kind: keyof typeof strokes;
}

const strokes = {
  first: { widthMm: 0.6 },
  later: { widthMm: 0.2, dashMm: [1.2, 0.8] },
  listens: { widthMm: 0.4, dashMm: [0.4, 1] },
} as const;

function linksOf(plan: Plan, consequences: Consequences, member: string): Link[] {
  const rungs = consequences
    .laddersOf(member)
    .flatMap((ladder) => ladder.rungs.flatMap((rung) => rung.channel ?? []));
  const slots = rungs.length > 0 ? rungs : consequences.checkInsOf(member).map((checkIn) => checkIn.channel);
  const known = [...new Set(slots)].filter((slot) => plan.channels.has(slot));
  const listens = (slot: number) => consequences.best(member, slot)?.may === 'listen only';
  const first = known.find((slot) => !listens(slot));
  return known.map((slot) => ({
    member,
    slot,
    kind: listens(slot) ? 'listens' : slot === first ? 'first' : 'later',
  }));
}

/** What the stations of a channel need, by name, one step deep: the outage table goes further. */
function needsOf(plan: Plan, slot: number): string[] {
  const channel = plan.channels.get(slot);
  const stations = [
    ...(channel?.kind === 'repeater' ? [plan.repeaters.get(channel.repeater)] : []),
    ...[...plan.mailboxes.values(), ...plan.digipeaters.values()].filter((one) => one.channel === slot),
  ];
  return stations.flatMap(
    (station) =>
      station?.dependsOn.map((id) => plan.assets.get(id)?.name ?? plan.repeaters.get(id)?.name ?? id) ?? [],
  );
}

function stationOf(plan: Plan, slot: number): string {
  const channel = plan.channels.get(slot);
  const repeater = channel?.kind === 'repeater' ? plan.repeaters.get(channel.repeater)?.name : undefined;
  return `${slot} ${repeater ?? channel?.name ?? ''}`;
}

/**
 * Who hangs on which station: members on the right, the channels of their ladders and check-ins in the middle,
 * what those need on the left. First calls have thick lines, later rungs thin dashed ones;
 * a dotted line goes to a channel that the member may only listen to.
 */
import type { Consequences } from '../../consequences/consequences.ts';
import type { Plan } from '../../plan/model.ts';
import type { Scene, Shape } from '../print/content.ts';

const widthMm = 180;
const rowMm = 6.5;
/** What a page holds beside a heading and the words below the picture; the rows move together before it is too tall. */
const tallestMm = 205;
/** Below this rows of 9 pt touch, and the picture is left out: the tables beside it say the same. */
const leastRowMm = 3.4;
const columns = { needs: 0, stations: 66, members: 136 } as const;

export function netDiagram(plan: Plan, consequences: Consequences, alt: string): Scene | undefined {
  const links = [...plan.members.keys()].flatMap((member) => linksOf(plan, consequences, member));
  const slots = [...new Set(links.map(({ slot }) => slot))].toSorted((a, b) => a - b);
  const members = [...plan.members.keys()].filter((id) => links.some(({ member }) => member === id));
  const needed = slots.map((slot) => ({ slot, needs: needsOf(plan, slot) }));
  const needs = [...new Set(needed.flatMap((one) => one.needs))];
  const rows = Math.max(slots.length, members.length, needs.length);
  if (slots.length === 0 || rows * leastRowMm > tallestMm) return undefined;
  const heightMm = Math.min(rows * rowMm, tallestMm) + 1;
  const yOf = (list: readonly unknown[], index: number) => ((index + 0.5) * heightMm) / list.length;
  const shapes: Shape[] = [];
  const words = (x: number, y: number, text: string, strong = false): void => {
    shapes.push({ kind: 'words', x, y: y + 1.1, text: cut(text), sizePt: 9, align: 'start', strong });
  };
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
  needs.forEach((need, index) => {
    words(columns.needs, yOf(needs, index), need);
  });
  slots.forEach((slot, index) => {
    const channel = plan.channels.get(slot);
    const repeater = channel?.kind === 'repeater' ? plan.repeaters.get(channel.repeater)?.name : undefined;
    const y = yOf(slots, index);
    words(columns.stations, y, `${slot} ${repeater ?? channel?.name ?? ''}`, true);
  });
  members.forEach((id, index) => {
    words(columns.members, yOf(members, index), plan.members.get(id)?.name ?? id);
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

function cut(name: string): string {
  return name.length > 24 ? `${name.slice(0, 23)}…` : name;
}

/**
 * One line that says what was tried and heard → a trial:
 *
 *     [DATE] PLACE to STATION [on SLOT] [with RADIO] [by MEMBER] heard WORD[: REPORT]
 *
 * Places, stations, radios and members go by id, or by the whole name they have in the plan. Nothing is guessed:
 * what does not lead anywhere is a complaint with the nearest that would.
 */
import { nearest } from '../findings/nearest.ts';
import type { Heard } from '../reach/heard.ts';
import type { Plan, Trial } from './model.ts';

export type TrialReading =
  | { readonly ok: true; readonly trial: Trial }
  | { readonly ok: false; readonly message: string; readonly remedy: string };

export const trialGrammar = '[DATE] PLACE to STATION [on SLOT] [with RADIO] [by MEMBER] heard WORD[: REPORT]';
const example = '2026-11-21 trailhead to gap on 1 with handheld by inez heard readable: 5 by 7';
const heardWords: readonly Heard[] = ['readable', 'weak', 'broken', 'nothing'];

/** @param today ISO date, for a line without one; no trial lies after it */
export function readTrialLine(line: string, plan: Plan, today: string): TrialReading {
  const match =
    /^\s*(?:(\d{4}-\d{2}-\d{2})\s+)?(?:from\s+)?(.+?)\s+to\s+(.+?)\s+heard\s+([^\s:]+)\s*(?::\s*(.*?))?\s*$/is.exec(
      line,
    );
  if (match === null)
    return refuse(
      /\bheard\b/i.test(line)
        ? `The line is not of the form ${trialGrammar}.`
        : 'The line does not say what was heard.',
      `For example: ${example}`,
    );
  const [, date = today, from = '', middle = '', heard = '', report] = match;
  if (!isDay(date)) return refuse(`There is no day ${date} in the calendar.`, 'Write it year-month-day.');
  if (date > today)
    return refuse(
      `The trial is dated ${date}, which is after today, ${today}.`,
      'A trial is what was really tried.',
    );
  const parts = splitParts(middle);
  if (parts === undefined)
    return refuse(`"on", "with" or "by" stands twice after "to".`, `For example: ${example}`);
  const places = named(plan.places);
  const stations = [
    ...named(plan.repeaters),
    ...named(plan.digipeaters),
    ...named(plan.mailboxes),
    ...places,
    ...named(plan.members),
  ];
  const found = {
    from: lookUp(from, places, 'place'),
    to: lookUp(parts.to, stations, 'station, place or member'),
    radio: parts.with === undefined ? undefined : lookUp(parts.with, named(plan.radios), 'radio'),
    member: parts.by === undefined ? undefined : lookUp(parts.by, named(plan.members), 'member'),
  };
  for (const each of Object.values(found)) if (each !== undefined && 'message' in each) return each;
  const slot = parts.on === undefined ? undefined : slotOf(parts.on, plan);
  if (typeof slot === 'object') return slot;
  const word = heardWords.find((each) => each === heard.toLowerCase());
  if (word === undefined) {
    const near = nearest(heard, heardWords);
    return refuse(
      `"${heard}" is not one of ${heardWords.join(', ')}.`,
      near === undefined ? 'A signal is one of these four.' : `Did you mean ${near}?`,
    );
  }
  const id = (each: Found | undefined) => (each !== undefined && 'id' in each ? each.id : undefined);
  const { radio, member } = { radio: id(found.radio), member: id(found.member) };
  return {
    ok: true,
    trial: {
      date,
      from: id(found.from) ?? '',
      to: id(found.to) ?? '',
      ...(slot !== undefined && { channel: slot }),
      ...(radio !== undefined && { radio }),
      ...(member !== undefined && { member }),
      heard: word,
      ...(report !== undefined && report !== '' && { report: report.replace(/\s+/g, ' ') }),
    },
  };
}

type Refused = Extract<TrialReading, { ok: false }>;
type Found = { readonly id: string } | Refused;

function refuse(message: string, remedy: string): Refused {
  return { ok: false, message, remedy };
}

function splitParts(middle: string): { to: string; on?: string; with?: string; by?: string } | undefined {
  const [to = '', ...rest] = middle.split(/\s+(on|with|by)\s+/i);
  const parts: { to: string; on?: string; with?: string; by?: string } = { to };
  for (let at = 0; at < rest.length; at += 2) {
    const word = rest[at]?.toLowerCase();
    if ((word !== 'on' && word !== 'with' && word !== 'by') || parts[word] !== undefined) return undefined;
    parts[word] = rest[at + 1] ?? '';
  }
  return parts;
}

function named(entries: ReadonlyMap<string, { readonly id: string; readonly name: string }>) {
  return [...entries.values()].map(({ id, name }) => ({ id, name }));
}

function lookUp(written: string, known: readonly { id: string; name: string }[], what: string): Found {
  const wanted = written.trim().toLowerCase();
  const byId = known.find(({ id }) => id === wanted);
  if (byId !== undefined) return { id: byId.id };
  const byName = known.filter(({ name }) => name.toLowerCase() === wanted);
  const [only] = byName;
  if (only !== undefined && byName.length === 1) return { id: only.id };
  if (only !== undefined)
    return refuse(
      `"${written}" is the name of several: ${byName.map(({ id }) => id).join(', ')}.`,
      'Write the id.',
    );
  const near = nearest(
    wanted,
    known.flatMap(({ id, name }) => [id, name.toLowerCase()]),
  );
  const list = known.map(({ id }) => id).join(', ');
  return refuse(
    `The plan has no ${what} "${written}".`,
    near === undefined ? `It has: ${list || 'none'}.` : `Did you mean ${near}? It has: ${list}.`,
  );
}

function slotOf(written: string, plan: Plan): number | Refused {
  const text = written.trim().replace(/^(?:slot|channel)\s+/i, '');
  const byName = [...plan.channels.values()].filter(({ name }) => name.toLowerCase() === text.toLowerCase());
  const slot = /^\d{1,4}$/.test(text) ? Number(text) : byName.length === 1 ? byName[0]?.slot : undefined;
  if (slot !== undefined && plan.channels.has(slot)) return slot;
  const names = [...plan.channels.values()].map((channel) => channel.name);
  const near = nearest(text, names);
  return refuse(
    `The plan has no channel in slot "${text}".`,
    near === undefined ? `Its slots are ${[...plan.channels.keys()].join(', ')}.` : `Did you mean ${near}?`,
  );
}

function isDay(date: string): boolean {
  const day = new Date(`${date}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === date;
}

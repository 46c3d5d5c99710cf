/**
 * Which of their radios a member takes up for a channel, and the call sign they say there. Whoever carries an
 * amateur handheld and one of another service may send on each channel with one of the two only; a card that does
 * not say which, and under which call, sends them to the wrong one.
 */
import type { Consequences } from '../consequences/consequences.ts';
import type { Member, Plan } from '../plan/model.ts';
import type { Law } from '../regulations/law.ts';
import type { Words } from './words.ts';

export interface CardRadios {
  /** The radios by their marks; empty where every radio of the member serves for every channel. */
  readonly legend: readonly { readonly mark: string; readonly name: string }[];
  /** Call signs to stand beside the name, each with the radios it is said on or the service it is valid in. */
  readonly calls: readonly string[];
  /** Marks of the radios that send on a channel, or that hear it where none sends; empty without a legend. */
  readonly marksOn: (slot: number) => string;
  /** The same, and empty where any of the radios will do. */
  readonly neededOn: (slot: number) => string;
}

export function cardRadios(
  plan: Plan,
  law: Law,
  consequences: Consequences,
  member: Member,
  words: Words,
): CardRadios {
  const radios = [...new Set(member.radios)].filter((id) => plan.radios.has(id));
  const slots = [...consequences.channels.keys()];
  const serving = new Map(slots.map((slot) => [slot, servingOn(consequences, member.id, radios, slot)]));
  const matters = radios.some((id) =>
    [...serving.values()].some((some) => some.length > 0 && !some.includes(id)),
  );
  const calls = callSignsByService(member, law);
  if (!matters) return { legend: [], calls: namedCalls(calls, words), marksOn: () => '', neededOn: () => '' };
  const markOf = (id: string): string => words.radioMark(radios.indexOf(id));
  const marks = (slot: number): string => (serving.get(slot) ?? []).map(markOf).join('');
  const services = new Map(radios.map((id) => [id, servicesOf(consequences, member.id, id)]));
  return {
    legend: radios.map((id) => ({ mark: markOf(id), name: plan.radios.get(id)?.name ?? id })),
    calls: calls.map((named) => {
      const saidOn = radios.filter((id) => services.get(id)?.has(named.service) === true);
      // A radio that sends in two services has two calls; the service then says which is whose.
      const clear = saidOn.length > 0 && saidOn.every((id) => sayable(calls, services.get(id)) === 1);
      const [call = ''] = clear || calls.length < 2 ? [named.call] : namedCalls(calls, words, named);
      const isAll = saidOn.length === radios.length;
      return saidOn.length === 0 || isAll ? call : `${call} ${words.onRadio(saidOn.map(markOf).join(''))}`;
    }),
    marksOn: marks,
    neededOn: (slot) => (serving.get(slot)?.length === radios.length ? '' : marks(slot)),
  };
}

function sayable(calls: readonly NamedCall[], services: ReadonlySet<string> | undefined): number {
  return calls.filter(({ service }) => services?.has(service) === true).length;
}

interface NamedCall {
  readonly service: string;
  readonly call: string;
}

/** Call signs with their services, in the order of the country's services. */
export function callSignsByService(member: Member, law: Law): readonly NamedCall[] {
  const order = law.country.services.map((service) => service.id);
  return [...member.licences]
    .toSorted(([a], [b]) => order.indexOf(a) - order.indexOf(b))
    .flatMap(([service, { call }]) => (call === undefined ? [] : [{ service, call }]));
}

/** One call sign needs no word beside it; of several each is valid in its own service alone. */
function namedCalls(calls: readonly NamedCall[], words: Words, only?: NamedCall): readonly string[] {
  if (calls.length < 2) return calls.map(({ call }) => call);
  return calls
    .filter((named) => only === undefined || named === only)
    .map(({ service, call }) => `${words.service(service)} ${call}`);
}

/** The radios that send on a channel; where none does, those that hear it. */
function servingOn(
  consequences: Consequences,
  member: string,
  radios: readonly string[],
  slot: number,
): readonly string[] {
  const may = (id: string) => consequences.use(member, id, slot)?.may;
  const sending = radios.filter((id) => may(id) === 'transmit');
  return sending.length > 0 ? sending : radios.filter((id) => may(id) === 'listen only');
}

/** In which services a member sends with a radio on channels of the plan. */
function servicesOf(consequences: Consequences, member: string, radio: string): ReadonlySet<string> {
  return new Set(
    [...consequences.channels.keys()].flatMap((slot) => {
      const use = consequences.use(member, radio, slot);
      return use?.may === 'transmit' && use.service !== undefined ? [use.service] : [];
    }),
  );
}

/**
 * The channel's name as it stands on the displays of the radios that serve there: cut to their length where it is
 * longer, and each form where they differ. Where no radio shows names it is the plan's own.
 */
export function displayedName(
  plan: Plan,
  consequences: Consequences,
  member: Member,
  slot: number,
  planned: string,
): string {
  const shown = servingOn(consequences, member.id, member.radios, slot).flatMap((id) => {
    const radio = plan.radios.get(id);
    const name = radio === undefined ? undefined : consequences.shownNames(radio).get(slot)?.shown;
    return name === undefined || name === '' ? [] : [name];
  });
  return shown.length === 0 ? planned : [...new Set(shown)].join('/');
}

/**
 * The script of each roll call: what net control says, whom they ask in which order, and the duty to identify
 * that the country's rules lay on the channel's service. And whose turn it is in the first days.
 */
import type { Consequences } from '../../consequences/consequences.ts';
import type { Occurrence } from '../../consequences/occurrences.ts';
import type { CheckIn, Plan } from '../../plan/model.ts';
import { identification, type Law, serviceById } from '../../regulations/law.ts';
import { checkInOf } from '../cards.ts';
import { shortDate } from '../figures.ts';
import type { Words } from '../words.ts';

export interface RollCall {
  readonly name: string;
  readonly when: string;
  readonly days: string;
  readonly slot: number;
  readonly channel: string;
  readonly lasts: string;
  /** Net control in the order of their turns. */
  readonly control: string;
  readonly turns: boolean;
  /** Whether anybody is called by a call sign; else the script is said with names, and has no column for them. */
  readonly signs: boolean;
  readonly open: string;
  readonly urgent: string;
  readonly roll: readonly RollRow[];
  readonly check: string;
  /** What to do about who did not answer; empty where no ladder is named. */
  readonly missed: string;
  /** Its id; empty where none is named. */
  readonly ladder: string;
  readonly close: string;
  /** The duty to identify; empty where there is none. */
  readonly identify: string;
  /** Of these words; empty where they are in the language of the booklet. */
  readonly identifyLanguage: string;
}

export interface RollRow {
  readonly name: string;
  /** The call sign that holds on the channel of the net; empty where they have none for it. */
  readonly call: string;
  /** Has no radio or no right to transmit on that channel. */
  readonly silent: boolean;
  /** Always net control, who does not call themselves. */
  readonly control: boolean;
  /** Net control when it is their turn. */
  readonly turn: boolean;
}

export interface TurnRow {
  readonly date: string;
  readonly time: string;
  readonly name: string;
  readonly control: string;
  /** Who reads out the plan check. */
  readonly reader: string;
}

export function rollCalls(
  plan: Plan,
  law: Law,
  consequences: Consequences,
  words: Words,
): readonly RollCall[] {
  const name = (id: string) => plan.members.get(id)?.name ?? id;
  return [...plan.checkIns.values()]
    .filter(({ listen }) => !listen)
    .map((checkIn) => {
      const { when, days, slot, channel, lasts } = checkInOf(plan, checkIn, false, words);
      const roll = consequences.membersOf(checkIn.who);
      const service = serviceOf(checkIn, [...checkIn.control, ...roll], consequences);
      const signs = service !== undefined && serviceById(law, service)?.callSigns === true;
      const how = service === undefined ? undefined : identification(law, service)?.how;
      const duty =
        service === undefined || how === undefined
          ? { text: '', language: '' }
          : words.identify(law.country, service, how);
      const ladder = checkIn.missed === undefined ? undefined : plan.ladders.get(checkIn.missed);
      return {
        name: checkIn.name,
        when,
        days,
        slot,
        channel,
        lasts,
        control: checkIn.control.map(name).join(', '),
        turns: checkIn.control.length > 1,
        signs,
        open: words.script.open(signs, plan.title, checkIn.name, `${slot}\u00a0${channel}`),
        urgent: words.script.urgent,
        roll: roll.flatMap((id) => {
          const member = plan.members.get(id);
          const controls = checkIn.control.includes(id);
          const use = consequences.best(id, checkIn.channel);
          return member === undefined
            ? []
            : [
                {
                  name: member.name,
                  call: use?.licence?.call ?? '',
                  silent: use?.may !== 'transmit',
                  control: controls && checkIn.control.length === 1,
                  turn: controls && checkIn.control.length > 1,
                },
              ];
        }),
        check: words.script.check,
        missed: ladder === undefined ? '' : words.script.missed(ladder.name),
        ladder: ladder?.id ?? '',
        close: words.script.close(signs, checkIn.name),
        identify: duty.text,
        identifyLanguage: duty.language,
      };
    });
}

/**
 * The service of a net: that in which the first of its people may transmit there, net control before others. Where
 * nobody may, the first service of the channel.
 */
function serviceOf(
  { channel }: CheckIn,
  people: readonly string[],
  consequences: Consequences,
): string | undefined {
  const used = people.map((id) => consequences.best(id, channel)?.service).find((id) => id !== undefined);
  return used ?? consequences.channels.get(channel)?.services[0];
}

export function turnRows(plan: Plan, coming: readonly Occurrence[], words: Words): readonly TurnRow[] {
  const name = (id: string | undefined) => (id === undefined ? '' : (plan.members.get(id)?.name ?? id));
  return coming
    .filter(({ checkIn }) => !checkIn.listen)
    .map(({ checkIn, local, control, reader }) => ({
      date: shortDate(local.date, words),
      time: `${String(Math.floor(local.minute / 60)).padStart(2, '0')}:${String(local.minute % 60).padStart(2, '0')}`,
      name: checkIn.name,
      control: name(control),
      reader: name(reader),
    }));
}

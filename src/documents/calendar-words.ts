/** Words of calendars, by language. */
import type { CheckIn, Language } from '../plan/model.ts';

export interface CalendarWords {
  channel(slot: number, name: string): string;
  readonly listen: string;
  control(names: readonly string[], turn: CheckIn['turn']): string;
  missed(ladder: string): string;
  /** Title of the entry that stands on a member's own turn. */
  yourTurn(checkIn: string): string;
  leftOut(date: string): string;
  comesTwice(date: string): string;
  revision(revision: number, check: string): string;
}

const english: CalendarWords = {
  channel: (slot, name) => `Channel ${slot} ${name}.`,
  listen: 'Listen; nobody calls the roll.',
  control: (names, turn) =>
    names.length === 1
      ? `Net control: ${names[0]}.`
      : `Net control in turn, ${{ day: 'by the day', week: 'by the week', time: 'each time' }[turn]}: ${names.join(', ')}.`,
  missed: (ladder) => `For who does not answer: ${ladder}.`,
  yourTurn: (checkIn) => `You are net control: ${checkIn}`,
  leftOut: (date) => `On ${date} the clocks leave this time out: ask when it is held.`,
  comesTwice: (date) => `On ${date} this time comes twice: ask which is meant.`,
  revision: (revision, check) => `Revision ${revision}, plan check ${check}.`,
};

const german: CalendarWords = {
  channel: (slot, name) => `Kanal ${slot} ${name}.`,
  listen: 'Hören; niemand ruft auf.',
  control: (names, turn) =>
    names.length === 1
      ? `Netzleitung: ${names[0]}.`
      : `Netzleitung reihum, ${{ day: 'täglich', week: 'wöchentlich', time: 'jedes Mal' }[turn]}: ${names.join(', ')}.`,
  missed: (ladder) => `Wenn jemand nicht antwortet: ${ladder}.`,
  yourTurn: (checkIn) => `Du leitest das Netz: ${checkIn}`,
  leftOut: (date) => `Am ${date} gibt es diese Uhrzeit nicht: nachfragen, wann es stattfindet.`,
  comesTwice: (date) => `Am ${date} kommt diese Uhrzeit zweimal: nachfragen, welche gilt.`,
  revision: (revision, check) => `Ausgabe ${revision}, Planprüfung ${check}.`,
};

const lists: Readonly<Record<Language, CalendarWords>> = { en: english, de: german };

export function calendarWords(language: Language = 'en'): CalendarWords {
  return lists[language];
}

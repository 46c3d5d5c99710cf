/**
 * Words that documents are made of where a template cannot place them, because which word it is depends on
 * the plan. Another language is another object of this type, and templates of its own.
 */
import type { OffsetDirection } from '../consequences/channel-particulars.ts';
import type { EntryField, Grade, Heard } from '../plan/model.ts';

export interface Words {
  readonly language: string;
  readonly direction: Readonly<Record<OffsetDirection, string>>;
  readonly grade: Readonly<Record<Grade, string>>;
  readonly heard: Readonly<Record<Heard, string>>;
  readonly field: Readonly<Record<EntryField, string>>;
  /** Days of the week, Monday first. */
  readonly dayShort: readonly string[];
  readonly everyDay: string;
  readonly weekdays: string;
  readonly weekends: string;
  readonly utc: string;
  /** After full hours of the clock: `07 10 13 h`. */
  readonly hours: string;
  readonly listenOnly: string;
  readonly none: string;
  readonly toneKind: Readonly<Record<'ctcss' | 'dcs' | 'none', string>>;
  calls(count: number): string;
  from(place: string): string;
  mailbox(name: string, through: readonly string[]): string;
  meet(place: string, when: string | undefined): string;
  /** A rule of recurrence that is no simple set of days. */
  recurring(rrule: string): string;
}

export const english: Words = {
  language: 'en',
  direction: { none: 'none', minus: 'minus', plus: 'plus' },
  grade: { primary: 'First', alternate: 'Then', contingency: 'Then', emergency: 'No radio' },
  heard: { readable: 'readable', weak: 'weak', broken: 'broken', nothing: 'nothing heard' },
  field: {
    receive: 'Receive',
    transmit: 'Transmit',
    step: 'Step',
    mode: 'Mode',
    'offset-direction': 'Offset direction',
    offset: 'Offset',
    'tone-kind': 'Tone kind',
    tone: 'Tone',
    'receive-tone': 'Receive tone',
    width: 'Width',
    power: 'Power',
    name: 'Name',
  },
  dayShort: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  everyDay: 'every day',
  weekdays: 'Mon to Fri',
  weekends: 'Sat, Sun',
  utc: 'UTC',
  hours: 'h',
  listenOnly: 'listen only',
  none: 'none',
  toneKind: { ctcss: 'CTCSS', dcs: 'DCS', none: 'none' },
  calls: (count) => (count === 1 ? '1 call' : `${count} calls`),
  from: (place) => `from ${place}`,
  mailbox: (name, through) =>
    `message to ${name}${through.length === 0 ? '' : ` through ${through.join(', ')}`}`,
  meet: (place, when) => `Meet: ${place}${when === undefined ? '' : `, ${when}`}`,
  recurring: (rrule) => rrule.toLowerCase().replaceAll(';', ', '),
};

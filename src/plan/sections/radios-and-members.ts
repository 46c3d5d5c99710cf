/** Kinds of radio, the people who hold them, and what stations depend on. */
import * as z from 'zod';
import { entry } from '../entry.ts';
import { idPattern } from '../id-words.ts';
import type { Battery, Licence } from '../model.ts';
import {
  byId,
  date,
  hertzSpan,
  keyed,
  line,
  listOf,
  oneOf,
  oneOrMore,
  quantity,
  reference,
  slotSpan,
  tone,
  trueOrFalse,
  wholeNumber,
} from '../written.ts';
import { antenna, backup, call, dependsOn, mode, power, sensitivity } from './entry-values.ts';

export const entryField = oneOf([
  'receive',
  'transmit',
  'step',
  'mode',
  'offset-direction',
  'offset',
  'tone-kind',
  'tone',
  'receive-tone',
  'width',
  'power',
  'name',
]);

export const battery = keyed(
  {
    energy: quantity('energy', 'an energy, such as 11 Wh'),
    spares: wholeNumber('how many spare batteries', 0, 99).default(0),
    volts: quantity('voltage', 'a voltage, such as 7.4 V').optional(),
    standby: quantity('current', 'a current, such as 60 mA').optional(),
    receive: quantity('current', 'a current, such as 180 mA').optional(),
    transmit: quantity('current', 'a current, such as 1.5 A').optional(),
  },
  'a battery: energy, spares, volts, standby, receive, transmit',
).transform((b) =>
  entry<Battery>({
    energyWh: b.energy,
    spares: b.spares,
    volts: b.volts,
    standbyA: b.standby,
    receiveA: b.receive,
    transmitA: b.transmit,
  }),
);

export const radio = keyed(
  {
    name: line('a name').describe('As members call this kind of radio.'),
    transmits: oneOrMore(hertzSpan, 'a list of ranges in MHz')
      .describe('Ranges in MHz where it can transmit.')
      .default([]),
    receives: oneOrMore(hertzSpan, 'a list of ranges in MHz').describe('Ranges in MHz where it can receive.'),
    certified: oneOrMore(reference('a service, such as amateur or gmrs'), 'a list of services')
      .default([])
      .describe('Services it may lawfully transmit in.'),
    memories: oneOrMore(slotSpan, 'slots it has, such as 1-128').describe('Slots it has, as a range: 1-128.'),
    'name-length': wholeNumber('how many characters of a name it shows', 0, 64)
      .default(0)
      .describe('Characters its display shows of a channel name; 0 for none.'),
    steps: oneOrMore(quantity('spacing', 'a step in kHz'), 'a list of tuning steps in kHz')
      .describe('Tuning steps, kHz; any if left out.')
      .default([]),
    widths: oneOrMore(quantity('spacing', 'a spacing in kHz'), 'a list of channel spacings in kHz')
      .describe('Channel spacings it can be set to, kHz; any if left out.')
      .default([]),
    tones: listOf(
      z.union([z.enum(['ctcss', 'dcs']), tone], { error: 'ctcss, dcs, or a tone it knows' }),
      'a list: ctcss, dcs, or single tones',
    )
      .describe('Kinds of tone it can send, or single tones; left out, it sends none.')
      .default([]),
    modes: listOf(mode, 'a list of modes').default(['fm']),
    powers: z
      .union(
        [
          z.record(z.string().regex(idPattern, { error: 'a word for the setting, such as high' }), power),
          power,
        ],
        {
          error: 'power settings, such as { high: 5 W, low: 1 W }',
        },
      )
      .describe('Its power settings by name.')
      .optional(),
    antenna: antenna.optional(),
    sensitivity,
    battery: battery.optional(),
    'entry-order': listOf(entryField, 'a list of what its menu asks for')
      .default(['receive', 'offset-direction', 'offset', 'tone', 'width', 'power', 'name'])
      .describe('The order in which its menu asks.'),
  },
  'a kind of radio',
);

export const licence = keyed(
  {
    class: line('a licence class')
      .transform((text) => text.toLowerCase())
      .describe('As the licence says it, such as general.')
      .optional(),
    call: call.describe('Their call sign in this service.').optional(),
    expires: date.describe('The last day it holds.').optional(),
    authority: line('who gave leave, and under what reference')
      .describe('For services that are open only with the leave of an agency.')
      .optional(),
  },
  'a licence: class, call, expires',
).transform((l) =>
  entry<Licence>({ class: l.class, call: l.call, expires: l.expires, authority: l.authority }),
);

export const member = keyed(
  {
    name: line('a name'),
    licences: byId(licence, 'licences by service, such as { amateur: { class: general, call: … } }')
      .describe('By service: amateur, gmrs …')
      .default(new Map()),
    radios: oneOrMore(reference('the id of a radio'), 'a list of radios')
      .default([])
      .describe('The kinds of radio they hold.'),
    at: reference('the id of a place').describe('Where they usually are.').optional(),
    roams: oneOrMore(reference('the id of a place'), 'a list of places')
      .default([])
      .describe('Where else they must be reachable from.'),
    contact: z
      .record(z.string(), line('a line of text'), {
        error: 'lines by what they are, such as { phone: "555-0142" }',
      })
      .describe('Private: printed only where a template asks for it by name.')
      .default({}),
    'contact-shared': trueOrFalse
      .default(false)
      .describe('Whether the contact may be printed for the whole group.'),
  },
  'a member: name, licences, radios, at',
);

export const asset = z.union(
  [keyed({ name: line('a name'), 'depends-on': dependsOn, backup }, 'an asset: name, depends-on, backup')],
  { error: 'an asset, such as { name: Valley power feeder }' },
);

/** Repeaters, mailboxes, digipeaters and the routes through them. */
import type { Route } from '../model.ts';
import {
  byId,
  frequency,
  keyed,
  line,
  listOf,
  minutes,
  quantity,
  reference,
  report,
  tone,
  trueOrFalse,
} from '../written.ts';
import { antenna, backup, call, dependsOn, power, sensitivity, slot } from './entry-values.ts';

export const repeater = keyed(
  {
    name: line('a name'),
    call: call.optional(),
    output: frequency.describe('What members listen to, MHz.'),
    offset: quantity('frequencyOffset', 'an offset in MHz, such as -0.6')
      .describe('Added to the output for transmit, MHz.')
      .optional(),
    input: frequency.describe('What members transmit on, MHz; in place of an offset.').optional(),
    service: reference('a service, such as amateur')
      .describe('The service meant, where a frequency belongs to several.')
      .optional(),
    tone: tone.describe('Needed to open it.').optional(),
    'output-tone': tone.describe('What it sends back.').optional(),
    width: quantity('spacing', 'a spacing in kHz, such as 25').describe('Channel spacing, kHz.').optional(),
    place: reference('the id of a place').describe('Where it stands.').optional(),
    antenna: antenna.optional(),
    power: power.describe('What its transmitter puts out.').optional(),
    sensitivity,
    'time-out': minutes('a time, such as 3 min')
      .describe('How long it lets one transmission last.')
      .optional(),
    coordinated: trueOrFalse.describe('Whether a frequency coordinator has agreed to it.').optional(),
    'depends-on': dependsOn,
    backup,
  },
  'a repeater: name, output, offset or input, tone, place',
).transform((r, context) => {
  if (r.offset === undefined && r.input === undefined) {
    report(
      context,
      'A repeater needs an offset or an input, so that members know what to transmit on.',
      'offset: -0.6',
    );
  }
  if (r.offset !== undefined && r.input !== undefined) {
    report(
      context,
      'A repeater has an offset or an input, not both: one of them could contradict the other.',
    );
  }
  const inputHz = r.input ?? r.output + (r.offset ?? 0);
  if (inputHz <= 0 && r.offset !== undefined) {
    // Six hundred written where kilohertz were meant.
    const kilohertz = Math.abs(r.offset) >= 100e6 ? `${r.offset / 1e6} kHz` : undefined;
    const message = `An offset of ${r.offset / 1e6} MHz would put the input below 0 MHz, for the output is ${r.output / 1e6} MHz.`;
    context.addIssue({
      code: 'custom',
      message,
      path: ['offset'],
      ...(kilohertz !== undefined && { params: { suggestion: kilohertz } }),
    });
  }
  return { ...r, inputHz };
});

export const packetStation = keyed(
  {
    name: line('a name').optional(),
    call: call.describe('With its SSID, such as KX4XWE-10.'),
    place: reference('the id of a place').optional(),
    channel: slot,
    power: power.optional(),
    antenna: antenna.optional(),
    sensitivity,
    'depends-on': dependsOn,
    backup,
  },
  'a packet station: call, place, channel',
);

export const route = keyed(
  {
    from: reference('the id of a place or a member'),
    to: reference('the id of a mailbox'),
    through: listOf(reference('the id of a digipeater'), 'a list of digipeaters').default([]),
  },
  'a route: from, to, through',
).transform((r): Route => r);

export const packet = keyed(
  {
    mailboxes: byId(packetStation, 'mailboxes by id').default(new Map()),
    digipeaters: byId(packetStation, 'digipeaters by id').default(new Map()),
    routes: listOf(route, 'a list of routes').default([]),
  },
  'packet: mailboxes, digipeaters, routes',
);

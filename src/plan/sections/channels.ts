/** Channels: a name, and one way of giving their frequencies. */
import * as z from 'zod';
import { frequency, keyed, line, quantity, reference, report, tone } from '../written.ts';
import { mode, power } from './entry-values.ts';

export const channelKeys = {
  name: line('a name').describe('As radios show it.'),
  use: line('a line of text').describe('What the channel is for.').optional(),
  repeater: reference('the id of a repeater').describe('A repeater of this plan.').optional(),
  simplex: frequency.describe('One frequency for both, MHz.').optional(),
  standard: line('a published channel, such as GMRS 20')
    .describe('A published channel: its figures come from the rules.')
    .optional(),
  listen: frequency.describe('Listen only, MHz.').optional(),
  receive: frequency.describe('With `transmit`: a pair that is no listed repeater, MHz.').optional(),
  transmit: frequency.optional(),
  tone: tone.describe('Sent when transmitting.').optional(),
  'receive-tone': tone.describe('Needed to open the squelch.').optional(),
  width: quantity('spacing', 'a spacing in kHz, such as 25').describe('Channel spacing, kHz.').optional(),
  mode: mode.default('fm'),
  power: z
    .union([power, reference('a power setting')], { error: 'a power such as 5 W, or the name of a setting' })
    .describe('A setting by name, or watts.')
    .optional(),
  service: reference('a service, such as amateur')
    .describe('The service meant, where a frequency belongs to several.')
    .optional(),
};

export const channel = keyed(
  channelKeys,
  'a channel: name, and one of repeater, simplex, standard, listen, or receive and transmit',
).transform((c, context) => {
  const given = (['repeater', 'simplex', 'standard', 'listen', 'receive', 'transmit'] as const).filter(
    (key) => c[key] !== undefined,
  );
  const pair = given.join(' ') === 'receive transmit';
  if (given.length === 0) {
    report(
      context,
      'The channel has no frequency: write one of repeater, simplex, standard, listen, or receive and transmit.',
    );
  } else if (given.length === 1 && (given[0] === 'receive' || given[0] === 'transmit')) {
    const missing = given[0] === 'receive' ? 'transmit' : 'receive';
    report(
      context,
      `The channel has \`${given[0]}\` without \`${missing}\`; a frequency only listened to is written \`listen\`.`,
    );
  } else if (given.length > 1 && !pair) {
    report(
      context,
      `The channel says ${given.map((key) => `\`${key}\``).join(' and ')}; one of them decides its frequency, so the others must go.`,
    );
  }
  return c;
});

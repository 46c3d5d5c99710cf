/** One row of a table of channels → a channel: simplex, a pair, one to listen to, or a published one. */
import { formatFrequency, formatSpacing } from '../radio/format-quantity.ts';
import { type Dimension, readQuantity } from '../radio/quantity.ts';
import { formatTone, parseTone } from '../radio/tone.ts';
import type { ImportedRow, ImportRow } from './import-table.ts';
import type { YamlValue } from './yaml-text.ts';

type Frequencies = readonly (readonly [string, YamlValue])[];
type Read<Value> = { readonly value: Value } | { readonly problem: string };

/** @param mapped fields that some column is mapped to: a blank cell says something only where there is a column */
export function importChannel(row: ImportRow, mapped: ReadonlySet<string>): ImportedRow {
  const slot = row.get('slot');
  if (slot === undefined || !/^(?:0|[1-9]\d{0,3})$/.test(slot))
    return { problem: `"${slot ?? ''}" is not a slot number` };
  const name = row.get('name');
  if (name === undefined) return { problem: `slot ${slot} has no name` };
  const frequencies = frequenciesOf(row, mapped);
  if ('problem' in frequencies) return { problem: `slot ${slot}: ${frequencies.problem}` };
  const tones = ['tone', 'receive tone'].map((field) => toneOf(row.get(field)));
  const width = row.has('width') ? quantity(row.get('width') ?? '', 'spacing') : undefined;
  for (const each of [...tones, width])
    if (each !== undefined && 'problem' in each) return { problem: `slot ${slot}: ${each.problem}` };
  const [tone, receiveTone] = tones.map((each) =>
    each !== undefined && 'value' in each ? each.value : undefined,
  );
  return {
    entry: {
      key: slot,
      value: {
        entries: [
          ['name', name],
          ...frequencies.value,
          [
            'width',
            width !== undefined && 'value' in width
              ? { figure: formatSpacing(width.value).replace(' kHz', '') }
              : undefined,
          ],
          ['tone', tone],
          ['receive-tone', receiveTone],
          ['mode', row.get('mode')?.toLowerCase()],
          ['power', row.get('power')],
          ['service', row.get('service')?.toLowerCase()],
          ['use', row.get('use')],
        ],
      },
    },
  };
}

const none = /^(?:none|off|no|simplex|-+|0(?:\.0+)?)$/i;
const listenOnly = /^(?:yes|y|x|true|listen(?: only)?|receive only)$/i;

function frequenciesOf(row: ImportRow, mapped: ReadonlySet<string>): Read<Frequencies> {
  const standard = row.get('standard');
  if (standard !== undefined) return { value: [['standard', standard]] };
  const receive = quantity(row.get('receive') ?? '', 'frequency');
  if ('problem' in receive) return receive;
  const figure = (hertz: number): YamlValue => ({ figure: formatFrequency(hertz) });
  const [transmit, direction, offset] = [row.get('transmit'), row.get('offset direction'), row.get('offset')];
  const listens = [row.get('listen'), transmit, direction].some(
    (cell) => cell !== undefined && listenOnly.test(cell),
  );
  if (listens) return { value: [['listen', figure(receive.value)]] };
  const sent =
    transmit === undefined
      ? shifted(receive.value, direction, offset, mapped)
      : quantity(transmit, 'frequency');
  if ('problem' in sent) return sent;
  return sent.value === receive.value
    ? { value: [['simplex', figure(receive.value)]] }
    : {
        value: [
          ['receive', figure(receive.value)],
          ['transmit', figure(sent.value)],
        ],
      };
}

/** Blank cells in columns of the offset mean no offset; without such a column nothing is known of transmitting. */
function shifted(
  receiveHz: number,
  direction: string | undefined,
  offset: string | undefined,
  mapped: ReadonlySet<string>,
): Read<number> {
  if (!mapped.has('offset') && !mapped.has('offset direction'))
    return {
      problem: mapped.has('transmit')
        ? 'transmit is blank; write the frequency, or listen only'
        : 'no column says what is transmitted on: map one to transmit, offset or listen',
    };
  if ((offset === undefined || none.test(offset)) && (direction === undefined || none.test(direction)))
    return { value: receiveHz };
  if (offset === undefined || none.test(offset))
    return { problem: `the offset goes ${direction} and has no size` };
  const size = quantity(offset.replace(/^\+/, ''), 'frequencyOffset');
  if ('problem' in size) return size;
  const word = direction?.toLowerCase() ?? (/^[+]/.test(offset) ? '+' : /^[-\u2212]/.test(offset) ? '-' : '');
  const sign = /^(?:\+|plus|up)$/.test(word)
    ? 1
    : /^(?:-|\u2212|minus|down)$/.test(word)
      ? -1
      : none.test(word)
        ? 0
        : undefined;
  if (sign === undefined) return { problem: `the offset ${offset} has no direction` };
  return { value: receiveHz + sign * Math.abs(size.value) };
}

function quantity(cell: string, dimension: Dimension): Read<number> {
  const reading = readQuantity(cell, dimension);
  return reading.ok ? { value: reading.value } : { problem: reading.message.replace(/\.$/, '') };
}

function toneOf(cell: string | undefined): Read<YamlValue> | undefined {
  if (cell === undefined || none.test(cell)) return undefined;
  const reading = parseTone(cell);
  if (!reading.ok) return { problem: reading.message.replace(/\.$/, '') };
  const text = formatTone(reading.value);
  return { value: reading.value.kind === 'ctcss' ? { figure: text } : text };
}

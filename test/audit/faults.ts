/** Slips that people make at a radio's menu, put into rows that were right: where each shows, and what caused it. */
import type { CauseCode } from '../../src/audit/cause.ts';
import type { Entry } from '../../src/consequences/entries.ts';
import { ctcssTones } from '../../src/radio/ctcss.ts';
import { formatFrequency } from '../../src/radio/format-quantity.ts';
import type { Seeded } from './seeded.ts';
import type { Row } from './worksheet-rows.ts';

export interface Bench {
  readonly rows: Row[];
  readonly entries: readonly Entry[];
  /** Rows of the revision before. */
  readonly lastRows: readonly Row[];
}

type Maker = (bench: Bench, chance: Seeded) => readonly number[] | undefined;

const slotOf = (row: Row) => Number(row.get('slot'));

/** Changes one cell of a row picked among those where the change makes sense. */
function cell(
  column: string,
  change: (value: string, row: Row, bench: Bench, chance: Seeded) => string | undefined,
): Maker {
  return (bench, chance) => {
    const able = bench.rows.filter(
      (row) => row.has(column) && change(row.get(column) ?? '', row, bench, chance) !== undefined,
    );
    const row = chance.pick(able);
    const value = row && change(row.get(column) ?? '', row, bench, chance);
    if (row === undefined || value === undefined || value === row.get(column)) return undefined;
    row.set(column, value);
    return [slotOf(row)];
  };
}

const entryOf = (bench: Bench, row: Row) => bench.entries.find(({ slot }) => slot === slotOf(row));

function swapDigits(text: string, chance: Seeded): string | undefined {
  const digits = [...text];
  const at = chance.pick(
    digits.flatMap((digit, i) =>
      /\d/.test(digit) && /\d/.test(digits[i + 1] ?? '') && digit !== digits[i + 1] ? [i] : [],
    ),
  );
  if (at === undefined) return undefined;
  [digits[at], digits[at + 1]] = [digits[at + 1] ?? '', digits[at] ?? ''];
  return digits.join('');
}

function wrongDigit(text: string, chance: Seeded): string | undefined {
  // The first figure of a band is not mistyped unseen: the radio refuses it.
  const at = chance.pick([...text].flatMap((digit, i) => (i > 0 && /\d/.test(digit) ? [i] : [])));
  if (at === undefined) return undefined;
  const other = String((Number(text[at]) + 1 + chance.below(9)) % 10);
  return text.slice(0, at) + other + text.slice(at + 1);
}

export const makers: Readonly<Partial<Record<CauseCode, Maker>>> = {
  'sign-swapped': cell('offset direction', (value) =>
    value === 'none' ? undefined : value === 'minus' ? 'plus' : 'minus',
  ),
  'offset-left-off': cell('offset direction', (value) => (value === 'none' ? undefined : 'none')),
  'offset-added': cell('offset direction', (value, row, bench, chance) =>
    value === 'none' && entryOf(bench, row)?.transmitHz !== undefined
      ? chance.pick(['plus', 'minus'])
      : undefined,
  ),
  'can-transmit': (bench, chance) => {
    const row = chance.pick(bench.rows.filter((each) => entryOf(bench, each)?.transmitHz === undefined));
    if (row === undefined) return undefined;
    if (row.has('offset direction')) row.set('offset direction', '+');
    else if (row.has('transmit')) row.set('transmit', row.get('receive') ?? '');
    else return undefined;
    return [slotOf(row)];
  },
  'point-moved': cell('offset', (value) =>
    value === 'none'
      ? undefined
      : String(Number(value)).replace(/^(?:0\.|(?=[1-9]))/, (at) => (at === '' ? '0.' : '')),
  ),
  'digits-exchanged': cell('receive', (value, _row, _bench, chance) => swapDigits(value, chance)),
  'one-digit-wrong': cell('receive', (value, _row, _bench, chance) => wrongDigit(value, chance)),
  'tone-missing': cell('tone', (value) => (value === 'none' ? undefined : 'off')),
  'tone-added': cell('tone', (value, row, bench, chance) => {
    const tone = chance.pick(ctcssTones);
    return value === 'none' && tone && entryOf(bench, row)?.transmitHz !== undefined
      ? `${tone.tenthsHz / 10}`
      : undefined;
  }),
  'next-tone': cell('tone', (value, _row, _bench, chance) => {
    const at = ctcssTones.findIndex((tone) => tone.tenthsHz === Math.round(Number(value) * 10));
    const next = at < 0 ? undefined : ctcssTones[at + (chance.below(2) === 0 ? 1 : -1)];
    return next && `${next.tenthsHz / 10}`;
  }),
  'code-inverted': cell('tone', (value) =>
    /^D\d/.test(value) ? value.replace(/[NI]$/, (sense) => (sense === 'N' ? 'I' : 'N')) : undefined,
  ),
  'tone-kind': cell('tone', (value) =>
    value === 'none' ? undefined : value.startsWith('D') ? '136.5' : 'D431N',
  ),
  'tone-on-receive': (bench, chance) => {
    const row = chance.pick(
      bench.rows.filter(
        (each) => each.get('tone') !== 'none' && entryOf(bench, each)?.receiveTone === undefined,
      ),
    );
    if (row === undefined) return undefined;
    row.set('receive tone', row.get('tone') ?? '');
    row.set('tone', 'none');
    return [slotOf(row)];
  },
  'tones-exchanged': (bench, chance) => {
    const able = bench.rows.filter(
      (each) =>
        each.has('receive tone') &&
        each.get('receive tone') !== 'none' &&
        each.get('tone') !== 'none' &&
        each.get('tone') !== each.get('receive tone'),
    );
    const row = chance.pick(able);
    if (row === undefined) return undefined;
    const [tone = '', back = ''] = [row.get('tone'), row.get('receive tone')];
    row.set('tone', back).set('receive tone', tone);
    return [slotOf(row)];
  },
  'input-output-exchanged': (bench, chance) => {
    const row = chance.pick(bench.rows.filter((each) => (entryOf(bench, each)?.offsetHz ?? 0) > 0));
    const entry = row && entryOf(bench, row);
    if (row === undefined || entry?.transmitHz === undefined) return undefined;
    row.set('receive', formatFrequency(entry.transmitHz));
    if (row.has('transmit')) row.set('transmit', formatFrequency(entry.receiveHz));
    if (row.has('offset direction'))
      row.set('offset direction', entry.direction === 'minus' ? 'plus' : 'minus');
    return [slotOf(row)];
  },
  'other-setting': (bench, chance) => {
    const width = cell('width', (value) => (value === '25 kHz' ? 'narrow' : 'wide'));
    const power = cell('power', (value) =>
      value.startsWith('any') ? undefined : value.startsWith('high') ? 'low' : 'high',
    );
    return (chance.below(2) === 0 ? width : power)(bench, chance);
  },
  'letters-exchanged': cell('name', (value, _row, _bench, chance) => {
    const at = chance.below(value.length - 1);
    const [a = '', b = ''] = [value[at], value[at + 1]];
    return a === b || a === ' ' || b === ' ' ? undefined : value.slice(0, at) + b + a + value.slice(at + 2);
  }),
  'one-letter': cell('name', (value, _row, _bench, chance) => {
    const at = chance.below(value.length);
    return `${value.slice(0, at)}${chance.pick([...'CEHJKPRTVWXY'])}${value.slice(at + 1)}`;
  }),
  'last-revision': (bench, chance) => {
    const able = bench.rows.flatMap((row) => {
      const old = bench.lastRows.find((each) => slotOf(each) === slotOf(row));
      return [...row.keys()].flatMap((column) =>
        old && column !== 'step' && old.get(column) !== row.get(column)
          ? [{ row, column, value: old.get(column) ?? '' }]
          : [],
      );
    });
    const chosen = chance.pick(able);
    chosen?.row.set(chosen.column, chosen.value);
    return chosen && [slotOf(chosen.row)];
  },
  'left-from-before': (bench, chance) => {
    const able = bench.rows.flatMap((row, i) => {
      const before = bench.rows[i - 1];
      return ['receive', 'tone', 'width', 'power'].flatMap((column) => {
        const [value, left] = [row.get(column), before?.get(column)];
        return value !== undefined &&
          left !== undefined &&
          value !== left &&
          !/^(?:none|any\b.*)$/.test(value) &&
          !/^(?:none|any\b.*|empty|)$/.test(left)
          ? [{ row, column, left }]
          : [];
      });
    });
    const chosen = chance.pick(able);
    chosen?.row.set(chosen.column, chosen.left);
    return chosen && [slotOf(chosen.row)];
  },
  'slot-run': (bench, chance) => {
    const before = bench.rows.map((row) => new Map(row));
    const length = 2 + chance.below(4);
    const from = chance.below(bench.rows.length - length);
    const by = chance.below(2) === 0 ? 1 : -1;
    const slots: number[] = [];
    for (let i = from; i < from + length; i += 1) {
      const [row, source] = [bench.rows[i], before[i + by]];
      if (row === undefined || source === undefined) return undefined;
      for (const [column, value] of source) if (column !== 'slot') row.set(column, value);
      slots.push(slotOf(row));
    }
    return slots;
  },
  'slots-exchanged': (bench, chance) => {
    const [a, b] = [chance.pick(bench.rows), chance.pick(bench.rows)];
    if (
      a === undefined ||
      b === undefined ||
      a === b ||
      [a, b].some((each) => each.get('receive') === 'empty')
    )
      return undefined;
    const kept = new Map(a);
    for (const [column, value] of b) if (column !== 'slot') a.set(column, value);
    for (const [column, value] of kept) if (column !== 'slot') b.set(column, value);
    return [slotOf(a), slotOf(b)];
  },
  'other-slot': (bench, chance) => {
    const row = chance.pick(bench.rows.filter((each) => each.get('receive') !== 'empty'));
    if (row === undefined) return undefined;
    const slot = 20 + chance.below(10);
    bench.rows.push(new Map([...row, ['slot', String(slot)]]));
    return [slot];
  },
  'never-entered': (bench, chance) => {
    const row = chance.pick(bench.rows);
    if (row === undefined) return undefined;
    for (const column of row.keys())
      if (column !== 'slot') row.set(column, column === 'receive' ? 'empty' : '');
    return [slotOf(row)];
  },
};

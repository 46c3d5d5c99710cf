/**
 * The values a plan is made of, as zod schemas: how each may be written, what it becomes, and what to say
 * of anything else.
 *
 * Two kinds of message leave a schema. A schema's own `error` is what was expected, as a noun phrase
 * ("a power, such as 5 W"); {@link ./read-as.ts} makes the sentence, since only it knows what was found. A
 * custom issue is a whole sentence, with a suggestion in its params where one is known.
 */
import * as z from 'zod';
import { nearest } from '../findings/nearest.ts';
import { formatFrequency, formatOffset, formatSpacing } from '../radio/format-quantity.ts';
import { type Dimension, type QuantityOptions, readQuantity } from '../radio/quantity.ts';
import { parseTone, type Tone } from '../radio/tone.ts';
import { parsePosition } from '../reach/position.ts';
import { idPattern } from './id-words.ts';
import type { Days, HertzSpan, Position, TimeOfDay } from './model.ts';

type IssueSink = {
  addIssue(issue: {
    code: 'custom';
    message: string;
    path?: PropertyKey[];
    params?: Record<string, unknown>;
    input?: unknown;
  }): void;
};

/** Reports a whole sentence about an entry. */
export function report(context: IssueSink, message: string, suggestion?: string): void {
  context.addIssue({
    code: 'custom',
    message,
    ...(suggestion === undefined ? {} : { params: { suggestion } }),
  });
}

/** Reports a whole sentence about a value and gives up on it: `return refuse(…)`. */
function refuse(context: IssueSink, message: string, suggestion?: string): never {
  report(context, message, suggestion);
  return z.NEVER;
}

/** Gives a schema the words for what it holds, which editors and the language reference show. */
function titled<Schema extends z.ZodType>(schema: Schema, what: string): Schema {
  z.globalRegistry.add(schema, { title: what });
  return schema;
}

/** A mapping with these keys and no others. The error lists them, so that the nearest one can be suggested. */
export function keyed<Shape extends z.core.$ZodShape>(shape: Shape, what: string) {
  const keys = Object.keys(shape).join(' ');
  const error = (issue: { code: string }) => (issue.code === 'unrecognized_keys' ? keys : what);
  return titled(z.strictObject(shape, { error }), what);
}

export const reference = (what: string) =>
  titled(z.string({ error: what }).regex(idPattern, { error: what }), what);

/** Entries by id, in the order of the file. */
export function byId<Entry extends z.ZodType>(entry: Entry, what: string) {
  const id = z
    .string()
    .regex(idPattern, { error: 'an id: a small letter, then small letters, digits and hyphens, 32 at most' });
  return titled(z.record(id, entry, { error: what }), what).transform(
    (entries) => new Map(Object.entries(entries) as [string, z.output<Entry>][]),
  );
}

/** No typeface has them; on a terminal they colour or hide what stands beside, or turn digits about. */
const seen = /^(?:[^\p{Cc}\u202A-\u202E\u2066-\u2069]|[\t\n\r])*$/u;

export const line = (what: string) =>
  titled(
    z
      .string({ error: what })
      .trim()
      .min(1, { error: what })
      .max(400, { error: `${what}, of at most 400 characters` })
      .refine((text) => seen.test(text), {
        error: 'This text holds a control character, which can be neither seen nor printed.',
      }),
    what,
  );

export const wholeNumber = (what: string, lowest: number, highest: number) =>
  titled(
    z.number({ error: what }).int({ error: what }).min(lowest, { error: what }).max(highest, { error: what }),
    what,
  );

/** What other programs take for true and false is text to YAML 1.2. */
const meantBoolean: ReadonlyMap<string, boolean> = new Map([
  ['yes', true],
  ['on', true],
  ['no', false],
  ['off', false],
]);

export const trueOrFalse = titled(
  z.boolean({
    error: ({ input }) => {
      const meant = typeof input === 'string' ? meantBoolean.get(input.toLowerCase()) : undefined;
      return `true or false (other words are text to YAML)${meant === undefined ? '' : `\n${meant}`}`;
    },
  }),
  'true or false',
);

export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words) {
  return z.enum(words, {
    error: (issue) => {
      const near = typeof issue.input === 'string' ? nearest(issue.input, words) : undefined;
      return `${words.length === 1 ? '' : 'one of '}${words.join(', ')}${near === undefined ? '' : `\n${near}`}`;
    },
  });
}

/** BCP 47 (RFC 5646, 2.1), the parts that name a language, a script and a country: `de`, `sr-Latn`, `de-CH`. */
export const languageTag = z
  .string({ error: 'the code of a language, such as en, de or es' })
  .regex(/^[a-z]{2,3}(?:-[A-Z][a-z]{3})?(?:-(?:[A-Z]{2}|[0-9]{3}))?$/, {
    error: 'the code of a language, such as en, de or es',
  });

export function listOf<Item extends z.ZodType>(item: Item, what: string) {
  return titled(z.array(item, { error: what }), what);
}

/** One item, or a list of them. */
export function oneOrMore<Item extends z.ZodType>(item: Item, what: string) {
  return titled(z.union([z.array(item), item.transform((value) => [value])], { error: what }), what);
}

/**
 * A written quantity, such as `5 W`, in the unit that {@link readQuantity} gives for its dimension. What is
 * larger than `most`, or than anything met of its kind, is refused: everything later may reckon with it.
 */
export function quantity(
  dimension: Dimension,
  what: string,
  options: QuantityOptions & { most?: number } = {},
) {
  const most = options.most ?? mostMet[dimension];
  return titled(z.union([z.string(), z.number()], { error: what }), what).transform(
    (written, context): number => {
      const reading = readQuantity(written, dimension, options);
      if (!reading.ok) return refuse(context, reading.message);
      if (Math.abs(reading.value) <= most) return reading.value;
      return refuse(
        context,
        `Expected ${what}; \`${written}\` is beyond anything met.`,
        readInHertz(written, dimension, most),
      );
    },
  );
}

/** Larger than anything a group writes, in the unit each dimension is read in; most are from common practice. */
const mostMet: Readonly<Record<Dimension, number>> = {
  // Where millimetre waves end (ITU Radio Regulations No. 2.1, band 11), above every allocation in use by voice.
  frequency: 300e9,
  frequencyOffset: 300e9,
  // A channel of television is 8 MHz wide.
  spacing: 10e6,
  power: 1e6,
  length: 20_000e3,
  // A hundred years.
  duration: 36_525 * 86_400,
  // The largest dish there is has some 80 dBi at its shortest waves.
  gain: 100,
  // One hertz of thermal noise is -174 dBm; 200 dBm are more than any transmitter gives.
  level: 200,
  energy: 1e6,
  current: 10e3,
  voltage: 1e6,
  loss: 1000,
  ratio: 1000,
};

/** Hertz written where a larger unit is read: 162550000, or a width of 12500. */
function readInHertz(written: string | number, dimension: Dimension, most: number): string | undefined {
  const write = inUsualUnit[dimension];
  if (write === undefined) return undefined;
  const reading = readQuantity(`${written} Hz`, dimension);
  return reading.ok && Math.abs(reading.value) <= most ? write(reading.value) : undefined;
}

const inUsualUnit: Partial<Readonly<Record<Dimension, (value: number) => string>>> = {
  frequency: formatFrequency,
  frequencyOffset: formatOffset,
  spacing: formatSpacing,
};

export const frequency = quantity('frequency', 'a frequency in MHz, such as 146.940');

export const minutes = (what: string) => quantity('duration', what).transform((seconds) => seconds / 60);

/** A range of frequencies in MHz, `144-148`, or a single one. */
export const hertzSpan = titled(
  z.union([z.string(), z.number()], { error: 'a range in MHz, such as 144-148' }),
  'a range in MHz, such as 144-148',
).transform((written, context): HertzSpan => {
  const [low = '', high = low, ...rest] = String(written)
    .replace(/MHz/i, '')
    .split(/\s*[-–]\s*/);
  const from = readQuantity(low, 'frequency');
  const to = readQuantity(high, 'frequency');
  if (!from.ok || !to.ok || rest.length > 0)
    return refuse(context, `\`${written}\` is not a range in MHz, such as 144-148.`);
  if (Math.max(from.value, to.value) > mostMet.frequency)
    return refuse(
      context,
      `Expected a range in MHz, such as 144-148; \`${written}\` is beyond anything met.`,
    );
  if (from.value > to.value)
    return refuse(context, `The range \`${written}\` runs backwards.`, `${high}-${low}`);
  return { fromHz: from.value, toHz: to.value };
});

/** Slots a radio has: `1-128`, `0`, or a list of such. */
export const slotSpan = titled(
  z.union([z.string(), z.number()], { error: 'a range of slots, such as 1-128' }),
  'a range of slots, such as 1-128',
).transform((written, context) => {
  const match = /^(\d{1,5})(?:\s*[-–]\s*(\d{1,5}))?$/.exec(String(written).trim());
  if (!match) return refuse(context, `\`${written}\` is not a range of slots, such as 1-128.`);
  const from = Number(match[1]);
  const to = Number(match[2] ?? match[1]);
  if (from > to) return refuse(context, `The range \`${written}\` runs backwards.`, `${to}-${from}`);
  return { from, to };
});

export const tone = titled(
  z.union([z.string(), z.number()], {
    error: 'a tone: a CTCSS frequency such as 100.0, or a DCS code such as D023N',
  }),
  'a CTCSS frequency such as 100.0, or a DCS code such as D023N',
).transform((written, context): Tone => {
  const reading = parseTone(written);
  return reading.ok ? reading.value : refuse(context, reading.message, reading.suggestion);
});

export const position = titled(
  z.union([z.string(), z.number(), z.array(z.number({ error: 'a number of degrees' }))], {
    error: 'a position: "36.6246, -84.2346", EM76vo or an MGRS reference',
  }),
  '"36.6246, -84.2346", EM76vo or an MGRS reference',
).transform((written, context): Position => {
  if (Array.isArray(written)) {
    return refuse(context, 'A position is one text in quotes, latitude first.', `"${written.join(', ')}"`);
  }
  const reading = parsePosition(String(written));
  return reading.ok ? reading.position : refuse(context, reading.reason);
});

const daysInMonth = (year: number, month: number) => new Date(Date.UTC(year, month, 0)).getUTCDate();

export const date = titled(
  z.string({ error: 'a date, such as 2026-12-01' }),
  'a date, such as 2026-12-01',
).transform((written, context): string => {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written);
  const [year, month, day] = [Number(match?.[1]), Number(match?.[2]), Number(match?.[3])];
  if (!match)
    return refuse(
      context,
      `\`${written}\` is not a date; dates are written year-month-day, such as 2026-12-01.`,
    );
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) {
    return refuse(context, `There is no day ${written} in the calendar.`);
  }
  return written;
});

export const timeOfDay = titled(
  z.union([z.string(), z.number()], { error: 'a time in quotes, such as "07:30" or "14:30Z"' }),
  'a time in quotes, such as "07:30" or "14:30Z"',
).transform((written, context): TimeOfDay => {
  const match = /^(\d{1,2}):(\d{2})(Z?)$/.exec(String(written).trim());
  const hour = Number(match?.[1]);
  const minute = Number(match?.[2]);
  if (!match || hour > 23 || minute > 59) {
    // YAML drops the last zero of 7.30.
    const text = String(written).replace(/^(\d{1,2}\.\d)$/, '$10');
    const digits = /^(\d{1,2})[.h]?(\d{2})$/.exec(text);
    const suggestion =
      digits && Number(digits[1]) < 24 && Number(digits[2]) < 60
        ? `"${(digits[1] ?? '').padStart(2, '0')}:${digits[2]}"`
        : undefined;
    return refuse(
      context,
      `\`${written}\` is not a time of day; times are written "07:30", or "14:30Z" for UTC.`,
      suggestion,
    );
  }
  return { minute: hour * 60 + minute, utc: match[3] === 'Z' };
});

const isoDay: ReadonlyMap<string, number> = new Map(
  ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'].map((day, index) => [day, index + 1] as const),
);
const everyDay = [1, 2, 3, 4, 5, 6, 7];

export const days = titled(
  z.union([z.string(), z.array(z.string({ error: 'a day of the week, such as mon' }))], {
    error: 'days: every day, weekdays, weekends, a list such as [mon, thu], or an RRULE',
  }),
  'every day, weekdays, weekends, a list such as [mon, thu], or an RRULE',
).transform((written, context): Days => {
  if (Array.isArray(written)) {
    const isoDays: number[] = [];
    for (const word of written) {
      const day = isoDay.get(word.toLowerCase().slice(0, 3));
      if (day === undefined) {
        return refuse(context, `\`${word}\` is not a day of the week.`, nearest(word, [...isoDay.keys()]));
      }
      if (!isoDays.includes(day)) isoDays.push(day);
    }
    if (isoDays.length === 0) return refuse(context, 'The list of days is empty.');
    return { kind: 'weekdays', isoDays: isoDays.sort((a, b) => a - b) };
  }
  const text = written.trim();
  if (text === 'every day' || text === 'daily') return { kind: 'weekdays', isoDays: everyDay };
  if (text === 'weekdays') return { kind: 'weekdays', isoDays: everyDay.slice(0, 5) };
  if (text === 'weekends') return { kind: 'weekdays', isoDays: everyDay.slice(5) };
  const single = isoDay.get(text.toLowerCase());
  if (single !== undefined) return { kind: 'weekdays', isoDays: [single] };
  const rule = text.replace(/^RRULE:/, '');
  const fault = faultInRecurrence(rule);
  if (fault !== undefined) return refuse(context, fault);
  return { kind: 'recurrence', rrule: rule };
});

/** Parts of an RFC 5545 recurrence rule (§3.3.10) and what each may hold. */
const recurrenceParts: Readonly<Record<string, RegExp>> = {
  FREQ: /^(DAILY|WEEKLY|MONTHLY|YEARLY)$/,
  INTERVAL: /^[1-9]\d{0,3}$/,
  COUNT: /^[1-9]\d{0,4}$/,
  UNTIL: /^\d{8}(T\d{6}Z?)?$/,
  BYDAY: /^([+-]?[1-5]?\d?(MO|TU|WE|TH|FR|SA|SU))(,[+-]?[1-5]?\d?(MO|TU|WE|TH|FR|SA|SU))*$/,
  BYMONTHDAY: /^-?([1-9]|[12]\d|3[01])(,-?([1-9]|[12]\d|3[01]))*$/,
  BYMONTH: /^([1-9]|1[0-2])(,([1-9]|1[0-2]))*$/,
  BYSETPOS: /^-?[1-9]\d{0,2}(,-?[1-9]\d{0,2})*$/,
  WKST: /^(MO|TU|WE|TH|FR|SA|SU)$/,
};

function faultInRecurrence(rule: string): string | undefined {
  if (!rule.includes('=')) {
    return `\`${rule}\` is not a way to give days: every day, weekdays, weekends, a list such as [mon, thu], or an RRULE such as FREQ=WEEKLY;BYDAY=MO.`;
  }
  const seen = new Set<string>();
  for (const part of rule.split(';')) {
    const [name = '', value = ''] = part.split('=');
    const allowed = Object.hasOwn(recurrenceParts, name) ? recurrenceParts[name] : undefined;
    if (allowed === undefined) return `\`${name}\` is not a part of a recurrence rule that a plan can use.`;
    if (!allowed.test(value))
      return `\`${part}\` is not a valid part of a recurrence rule (RFC 5545, 3.3.10).`;
    if (seen.has(name)) return `\`${name}\` stands twice in the recurrence rule.`;
    seen.add(name);
  }
  if (!seen.has('FREQ')) return 'A recurrence rule needs FREQ, such as FREQ=WEEKLY.';
  if (seen.has('UNTIL') && seen.has('COUNT'))
    return 'A recurrence rule has UNTIL or COUNT, not both (RFC 5545, 3.3.10).';
  return undefined;
}

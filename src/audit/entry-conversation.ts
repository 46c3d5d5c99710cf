/**
 * Reading a radio by question and answer: one channel at a time, in the order in which its menu asks. What the
 * plan has is never shown, so that the display is read and not confirmed.
 *
 * A generator, so that it knows no terminal: it yields what to say and what to ask, and is handed the line typed.
 */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import { formatPower, formatSpacing } from '../radio/format-quantity.ts';
import { askedFields } from './compare-entries.ts';
import { fieldWords } from './read-entries.ts';
import { readShown } from './shown-value.ts';

/** What was typed, by slot and field. A slot that is empty has `empty` as its receive frequency. */
export type Answers = ReadonlyMap<number, ReadonlyMap<EntryField, string>>;

export interface Turn {
  /** Whole lines to say first. */
  readonly say: readonly string[];
  readonly prompt: string;
  /** All that was answered until now, so that nothing is lost if the terminal closes. */
  readonly answers: Answers;
}

export function* entryConversation(
  radio: Radio,
  entries: readonly Entry[],
  answered: Answers,
): Generator<Turn, Answers, string | undefined> {
  const answers = new Map([...answered].map(([slot, fields]) => [slot, new Map(fields)]));
  const fields = askedFields(radio);
  const steps = entries
    .filter(({ slot }) => !answered.has(slot))
    .flatMap(({ slot }, number, all) => fields.map((field) => ({ slot, field, number, of: all.length })));
  let say: string[] = [
    'Turn the radio to each slot and type what its display shows.',
    'Enter alone: not read. empty: the slot holds nothing. <: one question back.',
    '?: how to write it. q: stop, and keep what was answered.',
  ];
  let at = 0;
  let announced: number | undefined;
  for (let step = steps[at]; step !== undefined; step = steps[at]) {
    const { slot, field } = step;
    if (announced !== slot) say.push('', `Slot ${slot} (${step.number + 1} of ${step.of})`);
    announced = slot;
    const line = yield { say, prompt: `  ${fieldWords(field)}: `, answers };
    say = [];
    const answer = line?.trim() ?? 'q';
    if (/^q(uit)?$/i.test(answer)) return answers;
    if (answer === '?') say = [`    ${help(field, radio)}`];
    else if (answer === '<') {
      at = Math.max(0, at - 1);
      const back = steps[at];
      if (back !== undefined) answers.get(back.slot)?.delete(back.field);
    } else if (/^\(?empty\)?$/i.test(answer)) {
      answers.set(slot, new Map([['receive', 'empty']]));
      while (steps[at]?.slot === slot) at += 1;
    } else {
      const known = answers.get(slot)?.get('tone-kind');
      const kind = known === undefined ? undefined : readShown('tone-kind', known, radio);
      // A channel that is called Q is answered "q" in quotes.
      const text = answer.replace(/^"(.*)"$/, '$1');
      const reading =
        text === '' ? undefined : readShown(field, text, radio, kind?.ok ? kind.values.toneKind : undefined);
      if (reading?.ok === false) {
        say = [`    ${reading.message}.`];
        continue;
      }
      const held = answers.get(slot) ?? new Map<EntryField, string>();
      if (reading !== undefined) held.set(field, text);
      answers.set(slot, held);
      at += 1;
    }
  }
  return answers;
}

/** How the answer to one question may be spelled. */
function help(field: EntryField, radio: Radio): string {
  switch (field) {
    case 'receive':
    case 'transmit':
      return `as the display has it: 146.94, 146.940, 146940 or 146.940.00${field === 'transmit' ? '; none if it has none' : ''}`;
    case 'step':
      return `in kHz: ${radio.stepsHz.map(formatSpacing).join(', ')}`;
    case 'offset-direction':
      return '+ or plus, - or minus, off or none; with its size if shown together: -0.6';
    case 'offset':
      return 'in MHz, 0.6 or 5, or with its unit, 600 kHz; none if it is off';
    case 'tone-kind':
      return 'CTCSS, DCS or none';
    case 'tone':
    case 'receive-tone':
      return '100 or 100.0; a digital code as D023N or D023I; off or none';
    case 'width':
      return `wide, narrow, or in kHz: ${radio.widthsHz.map(formatSpacing).join(', ')}`;
    case 'power':
      return [...radio.powersW].map(([name, powerW]) => `${name} or ${formatPower(powerW)}`).join(', ');
    case 'mode':
      return 'FM, AM, USB, LSB or CW';
    case 'name':
      return 'as the display shows it, cut or whole; "q" in quotes if that is the name';
  }
}

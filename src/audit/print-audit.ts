/** An audit as text for people: slot by slot what is, what to press, what probably happened, and whether it would be heard. */
import type { DisplayWidth } from '../findings/display-width.ts';
import type { Palette } from '../findings/print-findings.ts';
import { visibleText } from '../findings/visible-text.ts';
import { wrapText } from '../findings/wrap-text.ts';
import type { CauseCode } from './cause.ts';
import type { Audit, Difference } from './compare-entries.ts';
import { fieldWords } from './read-entries.ts';

export interface PrintAuditOptions {
  readonly radio: string;
  readonly title: string;
  readonly revision: number;
  readonly check: string;
  readonly checkWords: string;
  /** Holders of the radio differ in what they may do, and it was held against the sheet of those who may transmit. */
  readonly forLicensed: boolean;
  /** Columns of the terminal. */
  readonly width: number;
  readonly palette: Palette;
  readonly widthOf: DisplayWidth;
}

/** Ends with a newline. */
export function printAudit(audit: Audit, options: PrintAuditOptions): string {
  const { palette, width, widthOf } = options;
  const lines = (text: string, indent = '') => hanging(text, width, indent, widthOf);
  const head = `${options.radio} against ${options.title}, revision ${options.revision}, plan check ${options.check}`;
  const blocks = [wrapText(visibleText(head), width, widthOf).map(palette.strong).join('\n')];
  if (options.forLicensed)
    blocks.push(
      lines('Compared with the sheet for licensed holders of this radio.').map(palette.faint).join('\n'),
    );
  for (const group of bySlot(audit.differences)) blocks.push(slotBlock(group, options));
  for (const { slot, line, field, message } of audit.unclear) {
    const where = [slot === undefined ? `line ${line}` : `slot ${slot}`, field && fieldWords(field)]
      .filter(Boolean)
      .join(', ');
    blocks.push(
      lines(`${where}: ${message}`)
        .map((text) => palette.warning(text))
        .join('\n'),
    );
  }
  const unread = unreadText(audit);
  if (unread.length > 0)
    blocks.push(
      unread
        .flatMap((text) => lines(text))
        .map(palette.faint)
        .join('\n'),
    );
  blocks.push(closing(audit, options));
  return `${blocks.join('\n\n')}\n`;
}

const wholeSlot: ReadonlySet<CauseCode> = new Set(['slot-run', 'slots-exchanged', 'other-slot']);

function slotBlock(
  group: readonly [Difference, ...Difference[]],
  { palette, width, widthOf }: PrintAuditOptions,
): string {
  const [first] = group;
  const label = visibleText(`slot ${first.slot}${first.name === '' ? '' : ` ${first.name}`}`);
  if (group.every(({ cause }) => cause !== undefined && wholeSlot.has(cause.code))) {
    const fields = group.map(({ field }) => (field === 'slot' ? 'all of it' : fieldWords(field))).join(', ');
    const press = first.field === 'slot' ? first.press : `enter slot ${first.slot} anew from the worksheet`;
    return [
      ...opening(label, `${first.cause?.text ?? ''}; wrong here: ${fields}`, width, palette, widthOf),
      ...hanging(`press: ${press}`, width, '  ', widthOf),
      ...hanging(heardText(worst(group)), width, '  ', widthOf).map(palette.faint),
    ].join('\n');
  }
  return group
    .flatMap((each) => [
      ...opening(label, visibleText(each.message), width, palette, widthOf),
      ...hanging(`press: ${visibleText(each.press)}`, width, '  ', widthOf),
      ...(each.cause === undefined
        ? []
        : hanging(`likely: ${visibleText(each.cause.text)}`, width, '  ', widthOf)),
      ...hanging(heardText(each), width, '  ', widthOf).map(palette.faint),
    ])
    .join('\n');
}

function opening(
  label: string,
  message: string,
  width: number,
  palette: Palette,
  widthOf: DisplayWidth,
): string[] {
  const [line = '', ...rest] = hanging(`${label}: ${message}`, width, '', widthOf);
  return [
    palette.error(line.slice(0, label.length + 1)) + palette.strong(line.slice(label.length + 1)),
    ...rest.map(palette.strong),
  ];
}

function heardText({ effect }: Difference): string {
  const said = { heard: 'heard: yes', unheard: 'heard: no', harmless: 'heard: no, and harmless' }[
    effect.noticed
  ];
  return `${said}; ${effect.text}`;
}

/** Of several faults of one slot, the one that is noticed least. */
function worst(group: readonly [Difference, ...Difference[]]): Difference {
  return (
    group.find(({ effect }) => effect.noticed === 'unheard') ??
    group.find(({ effect }) => effect.noticed === 'heard') ??
    group[0]
  );
}

function bySlot(differences: readonly Difference[]): readonly (readonly [Difference, ...Difference[]])[] {
  const groups = new Map<number, [Difference, ...Difference[]]>();
  for (const difference of differences) {
    const group = groups.get(difference.slot);
    if (group === undefined) groups.set(difference.slot, [difference]);
    else group.push(difference);
  }
  return [...groups.values()];
}

function unreadText(audit: Audit): string[] {
  const whole = audit.unread.filter((slot) => slot.whole);
  const parts = audit.unread.filter((slot) => !slot.whole);
  const lines: string[] = [];
  if (whole.length > 0)
    lines.push(`Not read: slot${whole.length === 1 ? '' : 's'} ${whole.map(({ slot }) => slot).join(', ')}.`);
  // Fields that were left out on the same slots are told in one line.
  const alike = new Map<string, string[]>();
  for (const field of new Set(parts.flatMap(({ fields }) => fields))) {
    const slots = parts.filter(({ fields }) => fields.includes(field)).map(({ slot }) => slot);
    const where =
      slots.length === audit.slotsRead
        ? 'any slot'
        : `slot${slots.length === 1 ? '' : 's'} ${slots.join(', ')}`;
    alike.set(where, [...(alike.get(where) ?? []), fieldWords(field)]);
  }
  for (const [where, fields] of alike) lines.push(`Not read on ${where}: ${fields.join(', ')}.`);
  return lines;
}

function closing(audit: Audit, options: PrintAuditOptions): string {
  const { palette, width, widthOf } = options;
  const count = audit.differences.length;
  if (count > 0) {
    const slots = new Set(audit.differences.map(({ slot }) => slot)).size;
    const unheard = audit.differences.filter(({ effect }) => effect.noticed === 'unheard').length;
    const text = `${count} difference${count === 1 ? '' : 's'} in ${slots} slot${slots === 1 ? '' : 's'}; ${unheard === 0 ? 'none' : unheard} of them would go unheard.`;
    return hanging(text, width, '', widthOf).map(palette.error).join('\n');
  }
  if (!audit.clean) {
    const wanted =
      audit.slotsRead === audit.slots ? ' until frequencies, offsets and tones of all slots are read' : '';
    const text = `No difference in what was read: ${audit.slotsRead} of ${audit.slots} slots. The audit is not complete${wanted}.`;
    return hanging(text, width, '', widthOf).map(palette.warning).join('\n');
  }
  const check = `Plan check ${options.check}: ${options.checkWords}.`;
  return [
    `${palette.strong(`No difference in ${audit.slots} slot${audit.slots === 1 ? '' : 's'}.`)} ${check}`,
    '',
    'Read back by ____________________   Whose radio ____________________',
    'Date ____________   Signed ____________________',
  ].join('\n');
}

function hanging(text: string, width: number, indent: string, widthOf: DisplayWidth): string[] {
  return wrapText(text, width - indent.length - 2, widthOf).map(
    (line, index) => (index === 0 ? indent : `${indent}  `) + line,
  );
}

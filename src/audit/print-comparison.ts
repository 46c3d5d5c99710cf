/** Two revisions compared, as text for people. */
import type { DisplayWidth } from '../findings/display-width.ts';
import type { Palette } from '../findings/print-findings.ts';
import { visibleText } from '../findings/visible-text.ts';
import { wrapText } from '../findings/wrap-text.ts';
import type { Change, FieldChange, RevisionComparison } from './compare-revisions.ts';
import type { OldCard } from './old-cards.ts';
import { fieldWords } from './read-entries.ts';

export interface PrintComparisonOptions {
  readonly title: string;
  readonly old: { readonly revision: number; readonly check: string };
  readonly now: { readonly revision: number; readonly check: string };
  /** Members by id, of both revisions. */
  nameOf(member: string): string;
  readonly width: number;
  readonly palette: Palette;
  readonly widthOf: DisplayWidth;
}

/** Ends with a newline. */
export function printComparison(comparison: RevisionComparison, options: PrintComparisonOptions): string {
  const { palette, width, widthOf, old, now } = options;
  const lines = (text: string, indent = '') =>
    wrapText(visibleText(text), width - indent.length - 2, widthOf).map(
      (line, at) => indent + (at === 0 ? '' : '  ') + line,
    );
  const section = (title: string, entries: readonly (readonly string[])[]) =>
    entries.length === 0 ? [] : [[palette.strong(title), ...entries.flat()].join('\n')];
  const change = (what: string, each: Change): string[] => [
    ...lines(`${what}: ${{ new: 'new', gone: 'no more', changed: changed(each.fields) }[each.kind]}`, '  '),
  ];
  const head = lines(
    `${options.title}: revision ${old.revision} (${old.check}) to revision ${now.revision} (${now.check})`,
  );
  const blocks = [
    head.map(palette.strong).join('\n'),
    ...section(
      'Channels',
      comparison.channels.map((each) =>
        change(`${each.slot} ${each.name}${each.meansOther ? ', another channel' : ''}`, each),
      ),
    ),
    ...section(
      'Members',
      comparison.members.map((each) => change(each.name, each)),
    ),
    ...section(
      'Check-ins',
      comparison.checkIns.map((each) => change(each.name, each)),
    ),
    ...section(
      'Ladders',
      comparison.ladders.map((each) => change(each.name, each)),
    ),
    ...section(
      'Radios to enter again',
      comparison.radios
        .filter(({ enter, clear }) => enter.length + clear.length > 0)
        .map((radio) => [
          ...lines(
            `${radio.name} (${radio.holders.map(options.nameOf).join(', ') || 'nobody'}): ${radio.kept.length === 0 ? 'all of it' : `slots ${radio.kept.join(', ')} stay`}`,
            '  ',
          ),
          ...radio.enter.flatMap(({ slot, name, kind, fields }) =>
            lines(
              kind === 'new'
                ? `slot ${slot} ${name}: enter it, new`
                : `slot ${slot} ${name}: ${changed(fields.map((each) => ({ ...each, field: fieldWords(each.field) })))}`,
              '    ',
            ),
          ),
          ...radio.clear.flatMap(({ slot, name }) => lines(`slot ${slot} ${name}: clear it`, '    ')),
        ]),
    ),
    ...section(
      'What makes old cards dangerous, and whose',
      byDanger(comparison.cards).map(([text, names]) => [
        ...lines(text, '  ').map(palette.warning),
        ...lines(
          names.length === comparison.cards.length && names.length > 1 ? 'everybody' : names.join(', '),
          '    ',
        ),
      ]),
    ),
    ...section(
      'Slots that are still right on an old card',
      comparison.cards.map(({ name, validSlots }) =>
        lines(`${name}: ${validSlots.join(', ') || 'none'}`, '  '),
      ),
    ),
  ];
  const safe = comparison.cards.filter(({ dangers }) => dangers.length === 0).map(({ name }) => name);
  if (comparison.same)
    blocks.push('The plan check is the same: cards, radios and calendars stay as they are.');
  else if (safe.length > 0)
    blocks.push(
      lines(`Old cards without danger, though their plan check is out of date: ${safe.join(', ')}.`).join(
        '\n',
      ),
    );
  return `${blocks.join('\n\n')}\n`;
}

/** What is wrong with several cards is said once. */
function byDanger(cards: readonly OldCard[]): readonly (readonly [string, readonly string[]])[] {
  const names = new Map<string, string[]>();
  for (const { name, dangers } of cards)
    for (const { text } of dangers) names.set(text, [...(names.get(text) ?? []), name]);
  return [...names];
}

function changed(fields: readonly FieldChange[]): string {
  return fields.map(({ field, was, is }) => `${field} ${was || 'none'} to ${is || 'none'}`).join('; ');
}

/** The documents that move a group to a new revision: path → bytes. The card takes the smallest size that holds it. */
import type { Revision, RevisionComparison } from '../audit/compare-revisions.ts';
import type { CardSize } from '../plan/model.ts';
import { changeCard, changeWorksheets } from './change-sheets.ts';
import type { DocumentSet } from './document-set.ts';
import { manifest } from './manifest.ts';
import { type Press, type PrintFlaw, printerFor } from './printer.ts';

/** From the smallest up. */
const sizes: readonly CardSize[] = ['id-1', 'a7', 'index', 'a6'];

export async function changeSet(
  old: Revision,
  now: Revision,
  comparison: RevisionComparison,
  press: Press,
): Promise<DocumentSet> {
  const { words } = press;
  const printer = await printerFor(now.plan, press);
  const files = new Map<string, Uint8Array>();
  const flaws: PrintFlaw[] = [];
  for (const sheet of changeWorksheets(old, now, comparison, words)) {
    const printed = await printer.pdf(printer.content('change-worksheet.hbs', sheet), ['radios', sheet.id]);
    files.set(`worksheets/${sheet.id}.pdf`, printed.bytes);
    flaws.push(...printed.flaws);
  }
  const own = Math.max(0, sizes.indexOf(now.plan.cards.size));
  for (const size of sizes.slice(own)) {
    const card = changeCard(old, now, comparison, words, size);
    const printed = await printer.pdf(printer.content('change-card.hbs', card), ['cards', 'size']);
    if (printed.flaws.length > 0 && size !== sizes.at(-1)) continue;
    files.set('change-card.pdf', printed.bytes);
    flaws.push(...printed.flaws);
    break;
  }
  files.set('manifest.json', manifest(now.plan, now.check, files));
  return { files, flaws };
}

/**
 * CSV → rows of text, as RFC 4180 (October 2005, section 2) has it, and as spreadsheets write it besides: a
 * byte-order mark, semicolons or tabs in place of commas (common practice where the comma is the decimal sign),
 * lines that end in LF alone, an apostrophe before text that could be taken for a formula.
 */
export interface CsvRow {
  /** Line of the text on which the row begins, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** The rows that are not blank; the first is the head. A quote left open takes in the rest of the text. */
export function readCsv(text: string): readonly CsvRow[] {
  const content = text.replace(/^\uFEFF/, '');
  const comma = separatorOf(content);
  const rows: CsvRow[] = [];
  let cells: string[] = [];
  let cell = '';
  let quoted = false;
  let line = 1;
  let begun = 1;
  const endCell = () => {
    cells.push(cell.trim());
    cell = '';
  };
  const endRow = () => {
    endCell();
    if (cells.some((each) => each !== '')) rows.push({ line: begun, cells });
    cells = [];
  };
  for (let at = 0; at < content.length; at += 1) {
    const character = content[at] ?? '';
    if (character === '\n') line += 1;
    if (quoted) {
      if (character !== '"') cell += character;
      else if (content[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (character === '"' && cell.trim() === '') {
      quoted = true;
      cell = '';
    } else if (character === comma) endCell();
    else if (character === '\n') {
      endRow();
      begun = line;
    } else if (character !== '\r') cell += character;
  }
  endRow();
  return rows;
}

/** Whichever of comma, semicolon and tab the head has most of. */
function separatorOf(content: string): string {
  const head = content.split('\n', 1)[0] ?? '';
  const count = (separator: string) => head.split(separator).length;
  return [',', ';', '\t'].reduce((best, each) => (count(each) > count(best) ? each : best));
}

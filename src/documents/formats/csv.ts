/**
 * Rows → CSV as RFC 4180 (October 2005, section 2) has it: lines end in CRLF, fields with a comma, a quote
 * or a line end are quoted, a quote inside is doubled.
 *
 * A spreadsheet takes a field for a formula if it begins with = + - @, a tab or a line end, quoted or not
 * (CWE-1236; OWASP ASVS 5.0, 1.2.10, which adds NUL). Text from other people that begins so gets an
 * apostrophe; a number is ours, stays a number, and may begin with a minus.
 */

/** A text as somebody wrote it, a number, or a number already spelled with its decimals, as in 146.940. */
export type CsvField = string | number | { readonly figure: string };

/**
 * The head and the rows below it, in UTF-8 without a byte-order mark.
 *
 * @throws Error if rows differ in length or a figure is no plain decimal number: both are faults of ours
 */
export function csv(rows: readonly (readonly CsvField[])[]): Uint8Array {
  const width = rows[0]?.length ?? 0;
  const lines = rows.map((row, index) => {
    if (row.length !== width)
      throw new Error(`Row ${index} of the CSV has ${row.length} fields; the head has ${width}.`);
    return `${row.map(field).join(',')}\r\n`;
  });
  return new TextEncoder().encode(lines.join(''));
}

function field(value: CsvField): string {
  if (typeof value === 'string') return quoted(/^[=+\-@\t\r\n\0]/.test(value) ? `'${value}` : value);
  const figure = typeof value === 'number' ? String(value) : value.figure;
  if (!/^-?\d+(\.\d+)?$/.test(figure)) throw new Error(`"${figure}" is no plain decimal number.`);
  return figure;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

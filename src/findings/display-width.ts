/**
 * How many columns of a screen a text takes. Wide scripts and combining marks need tables of Unicode that take
 * a sixth of the time of a whole check to load, so whoever prints decides what is needed: for printable
 * ASCII {@link plainWidth}, for anything else a library's function, handed in.
 */
export type DisplayWidth = (text: string) => number;

export function isPlain(text: string): boolean {
  return /^[\t\n\r\x20-\x7e]*$/.test(text);
}

export const plainWidth: DisplayWidth = (text) => text.length;

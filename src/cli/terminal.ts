/** What the terminal can show: colour and width, decided for each stream by ourselves. */
import { type DisplayWidth, isPlain, plainWidth } from '../findings/display-width.ts';

export interface TerminalOptions {
  /** False when `--no-color` was given. */
  readonly color?: boolean;
}

/**
 * Colour only on a terminal, and never against NO_COLOR (no-color.org: set and not empty) or `--no-color`.
 * FORCE_COLOR is obeyed both ways: 0 turns colour off, anything else on.
 */
export function hasColour(stream: NodeJS.WriteStream, options: TerminalOptions): boolean {
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (options.color === false || (NO_COLOR !== undefined && NO_COLOR !== '')) return false;
  if (FORCE_COLOR !== undefined && FORCE_COLOR !== '') return FORCE_COLOR !== '0';
  return stream.isTTY === true && TERM !== 'dumb';
}

/** Columns to fill: those of the terminal up to 100, so that sentences stay readable; 80 in a pipe. */
export function columnsOf(stream: NodeJS.WriteStream): number {
  return Math.max(40, Math.min(stream.isTTY ? stream.columns : 80, 100));
}

/** How wide texts are: by a library's tables of Unicode where there is anything to look up in them. */
export async function displayWidth(texts: readonly string[]): Promise<DisplayWidth> {
  return texts.every(isPlain) ? plainWidth : (await import('string-width')).default;
}

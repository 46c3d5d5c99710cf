/** The colours of findings on a stream, or none. Colour only repeats what the words say. */
import { createColors } from 'picocolors';
import { type Palette, plainPalette } from '../findings/print-findings.ts';
import { hasColour, type TerminalOptions } from './terminal.ts';

export function palette(stream: NodeJS.WriteStream, options: TerminalOptions): Palette {
  if (!hasColour(stream, options)) return plainPalette;
  const { red, yellow, cyan, bold, dim } = createColors(true);
  return { error: (text) => bold(red(text)), warning: yellow, note: cyan, strong: bold, faint: dim };
}

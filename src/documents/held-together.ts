const unit = 'dBm|dBd|dBi|dB|MHz|kHz|Hz|km|m|mW|W|min|s|h';
const figureAndUnit = new RegExp(`(?<=\\d) (?=(?:${unit})(?![\\p{L}\\p{N}]))`, 'gu');

/** A sentence whose figures cannot part from their units at the end of a line (common practice of typesetting). */
export function heldTogether(sentence: string): string {
  return sentence.replace(figureAndUnit, '\u00a0');
}

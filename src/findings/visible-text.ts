/**
 * Text from a plan, made safe to show: a control character could move the cursor, change colours or hide a
 * line of a terminal, and a change of writing direction could make one digit look like another.
 */

// C0 and C1 controls, DEL, line and paragraph separators, zero-width and direction characters, the BOM, tags.
const hidden =
  /[\p{Cc}\p{Zl}\p{Zp}\u00AD\u061C\u180E\u200B-\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB\u{E0000}-\u{E007F}]|\p{Cs}/gu;

/** The same text with every character that cannot be seen replaced by one that can: ESC becomes `␛`, U+202E becomes `<U+202E>`. */
export function visibleText(text: string): string {
  return text.replace(hidden, (character) => {
    const code = character.codePointAt(0) ?? 0;
    if (code < 0x20) return String.fromCodePoint(0x2400 + code);
    if (code === 0x7f) return '\u2421';
    // Half of a surrogate pair is no character; it would come out as garbage or an error.
    if (code >= 0xd800 && code <= 0xdfff) return '\uFFFD';
    return `<U+${code.toString(16).toUpperCase().padStart(4, '0')}>`;
  });
}

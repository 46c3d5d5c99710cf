/**
 * The bytes of a plan file to text, or a refusal that says what the file is instead and how to save it.
 * A byte-order mark is dropped; line ends are left as they are.
 */
import { Refusal } from '../findings/refusal.ts';

/** A plan of ten thousand channels takes about two megabytes. */
export const largestPlanBytes = 8 * 1024 * 1024;

/**
 * @param name the file as the user named it, for the message
 * @throws {Refusal} for a file that is too large, binary, or not UTF-8
 */
export function decode(bytes: Uint8Array, name: string): string {
  if (bytes.length > largestPlanBytes) throw tooLarge(name, bytes.length);
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new Refusal(`${name} is saved as UTF-16.`, 'Save it again as UTF-8.');
  }
  if (bytes.subarray(0, 65_536).includes(0)) {
    throw new Refusal(`${name} is not a text file.`, 'A plan is a YAML file, saved as UTF-8.');
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    const offset = firstByteThatIsNotUtf8(bytes);
    const lines = new TextDecoder().decode(bytes.subarray(0, offset)).split('\n');
    const [line, column] = [lines.length, (lines.at(-1) ?? '').length + 1];
    const byte = (bytes[offset] ?? 0).toString(16).toUpperCase().padStart(2, '0');
    throw new Refusal(
      `${name}:${line}:${column}: the byte ${byte} is not UTF-8; the file may be saved as Latin-1 or Windows-1252.`,
      'Save it again as UTF-8.',
    );
  }
}

export function tooLarge(name: string, bytes: number): Refusal {
  return new Refusal(
    `${name} holds ${Math.ceil(bytes / 1024 / 1024)} MB; a plan holds at most ${largestPlanBytes / 1024 / 1024} MB.`,
    'Check that this is the plan, and not a picture or an archive.',
  );
}

/** Offset of the first byte that begins no character (Unicode 16.0, table 3-7); a decoder tells only whether there is one. */
function firstByteThatIsNotUtf8(bytes: Uint8Array): number {
  let offset = 0;
  while (offset < bytes.length) {
    const length = lengthOfCharacter(bytes, offset);
    if (length === undefined) return offset;
    offset += length;
  }
  return offset;
}

function lengthOfCharacter(bytes: Uint8Array, offset: number): number | undefined {
  const first = bytes[offset] ?? 0;
  if (first < 0x80) return 1;
  const length = first < 0xc2 ? 0 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : first < 0xf5 ? 4 : 0;
  if (length === 0) return undefined;
  // Some first bytes allow only a part of what may follow others: no overlong forms, no surrogates.
  const lowest = first === 0xe0 ? 0xa0 : first === 0xf0 ? 0x90 : 0x80;
  const highest = first === 0xed ? 0x9f : first === 0xf4 ? 0x8f : 0xbf;
  const second = bytes[offset + 1] ?? 0;
  if (second < lowest || second > highest) return undefined;
  for (let at = offset + 2; at < offset + length; at += 1)
    if (((bytes[at] ?? 0) & 0xc0) !== 0x80) return undefined;
  return length;
}

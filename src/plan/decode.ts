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
    const before = bytes.subarray(0, offset);
    const line = before.reduce((count, byte) => (byte === 0x0a ? count + 1 : count), 1);
    const column = offset - before.lastIndexOf(0x0a);
    const byte = (bytes[offset] ?? 0).toString(16).toUpperCase();
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

function firstByteThatIsNotUtf8(bytes: Uint8Array): number {
  let low = 0;
  let high = bytes.length;
  // The longest prefix that decodes: halve, since a decoder tells only whether, not where.
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (decodes(bytes.subarray(0, middle))) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Whether these bytes are the beginning of UTF-8 text; a character cut off at the end does not count against them. */
function decodes(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

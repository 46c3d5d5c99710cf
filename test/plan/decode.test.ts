import { describe, expect, test } from 'vitest';
import { Refusal } from '../../src/findings/refusal.ts';
import { decode, largestPlanBytes } from '../../src/plan/decode.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);
const latin1 = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

function refused(bytes: Uint8Array): Refusal {
  try {
    decode(bytes, 'plan.yaml');
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('the bytes were read');
}

test('a plan in UTF-8 is read letter by letter, line ends and all', () => {
  expect(decode(utf8('title: Łódź 山 🏔\r\n'), 'plan.yaml')).toBe('title: Łódź 山 🏔\r\n');
});

test('the mark that some editors put before a file is dropped', () => {
  expect(decode(Uint8Array.of(0xef, 0xbb, 0xbf, 0x61), 'plan.yaml')).toBe('a');
});

describe('what is no plan is refused by what it is', () => {
  test('a file in Latin-1 by the line and column of its first foreign byte', () => {
    const { message, remedy } = refused(latin1('readback: 1\nplan:\n  title: Café\n'));
    expect(message).toMatch(/^plan\.yaml:3:13: the byte E9 is not UTF-8/);
    expect(remedy).toMatch(/UTF-8/);
  });

  test('a file in Latin-1 whose column counts letters, not bytes, after others that are UTF-8', () => {
    const bytes = Uint8Array.of(...utf8('title: Łó'), 0xe9);
    expect(refused(bytes).message).toMatch(/^plan\.yaml:1:10: the byte E9/);
  });

  test.each([
    ['little', [0xff, 0xfe, 0x61, 0x00]],
    ['big', [0xfe, 0xff, 0x00, 0x61]],
  ])('UTF-16, %s end first', (_, bytes) => {
    expect(refused(Uint8Array.from(bytes)).message).toBe('plan.yaml is saved as UTF-16.');
  });

  test('a picture', () => {
    // The first bytes of every PNG file (ISO/IEC 15948:2004, 5.2) and of its header chunk.
    const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00, 0x00, 0x0d];
    expect(refused(Uint8Array.from(png)).message).toBe('plan.yaml is not a text file.');
  });

  test('a file of 50 megabytes, without reading it as text', () => {
    expect(refused(new Uint8Array(50 * 1024 * 1024)).message).toBe(
      `plan.yaml holds 50 MB; a plan holds at most ${largestPlanBytes / 1024 / 1024} MB.`,
    );
  });

  test('a character cut off at the end of the file', () => {
    expect(refused(Uint8Array.of(0x61, 0xe5, 0xb1)).message).toMatch(/not UTF-8/);
  });
});

test('an empty file is text, with nothing in it', () => {
  expect(decode(new Uint8Array(0), 'plan.yaml')).toBe('');
});

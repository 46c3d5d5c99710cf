/** Standard input, which can be read once: whoever reads it again finds nothing there. */
import { Refusal } from '../findings/refusal.ts';

let taken = false;

/** @throws {Refusal} when it was read before */
export function takeStandardInput(): NodeJS.ReadStream {
  if (taken) throw readTwice();
  taken = true;
  return process.stdin;
}

export function readTwice(): Refusal {
  return new Refusal(
    '`-` stands twice: standard input can be read only once.',
    'Name a file in place of one of them.',
  );
}

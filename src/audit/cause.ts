/** How a value most likely came to be wrong. A cause is a guess from the figures alone, and its code is kept for ever. */
import type { DigitSlip } from './digit-slip.ts';

export type CauseCode =
  | DigitSlip
  | 'slot-run'
  | 'slots-exchanged'
  | 'other-slot'
  | 'input-output-exchanged'
  | 'last-revision'
  | 'left-from-before'
  | 'sign-swapped'
  | 'offset-left-off'
  | 'offset-added'
  | 'tone-on-receive'
  | 'tones-exchanged'
  | 'tone-missing'
  | 'tone-added'
  | 'tone-kind'
  | 'code-inverted'
  | 'next-tone'
  | 'can-transmit'
  | 'other-setting'
  | 'follows'
  | 'letters-exchanged'
  | 'one-letter'
  | 'looks-alike'
  | 'name-cut'
  | 'never-entered'
  | 'not-cleared';

export interface Cause {
  readonly code: CauseCode;
  /** A clause that ends the sentence "likely: …". */
  readonly text: string;
}

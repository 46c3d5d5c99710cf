/** A plan with one slip in it, and what loading says of it. */
import { load } from '../../src/plan/load.ts';
import { everyKey } from './every-key.ts';

/** The whole plan with one piece written otherwise; the piece must stand there. */
export function slip(piece: string, written: string): string {
  if (!everyKey.includes(piece)) throw new Error(`the plan does not have ${piece}`);
  return everyKey.replace(piece, () => written);
}

export interface Said {
  readonly rule: string;
  readonly at: string;
  readonly message: string;
  readonly suggestion: string | undefined;
  /** The text that carets stand under. */
  readonly marked: string;
}

export function said(text: string): Said[] {
  const { findings, text: source } = load(text, 'plan.yaml');
  const lines = source.text.split('\n');
  return findings.map(({ rule, path, message, suggestion, place }) => ({
    rule,
    at: path.join('.'),
    message,
    suggestion,
    marked: (lines[place.line - 1] ?? '').slice(
      place.column - 1,
      place.endLine === place.line ? place.endColumn - 1 : undefined,
    ),
  }));
}

/** The only thing that is said of a text. */
export function onlySaid(text: string): Said {
  const [first, ...others] = said(text);
  if (first === undefined) throw new Error('nothing is said of this text');
  if (others.length > 0) throw new Error(`more is said: ${others.map(({ message }) => message).join(' | ')}`);
  return first;
}

/** `line:column` of every finding. */
export function places(text: string): string[] {
  return load(text, 'plan.yaml').findings.map(({ place }) => `${place.line}:${place.column}`);
}

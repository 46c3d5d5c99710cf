/**
 * How every command ends: with its status; or, for work that could not be done, with a sentence and a remedy;
 * or, for a fault of our own, with a request for the plan. Never with a stack trace.
 */
import { Refusal } from '../findings/refusal.ts';
import './interruption.ts';

/** 0 nothing wrong; 1 findings, or an audit that differs; 2 the work could not be done. */
export type ExitStatus = 0 | 1 | 2;

for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    // A reader such as `head` may close the pipe early: that is no error of ours or theirs.
    if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0);
    if (stream === process.stdout) {
      const what = error.code === 'ENOSPC' ? 'there is no room left for it' : error.message;
      process.stderr.write(`readback: The result could not be written: ${what}.\n`);
    }
    process.exit(2);
  });
}

/** A refusal and its remedy, as every command says them. */
export function refusalText({ message, remedy }: Refusal): string {
  return `readback: ${message}\n${remedy === undefined ? '' : `  ${remedy}\n`}`;
}

export async function endWith(work: Promise<ExitStatus>): Promise<void> {
  try {
    process.exitCode = await work;
  } catch (error) {
    process.exitCode = 2;
    if (error instanceof Refusal) {
      process.stderr.write(refusalText(error));
      return;
    }
    const what = error instanceof Error ? error.message : String(error);
    process.stderr.write(
      `readback: a fault in this program, not in your plan: ${what}\n` +
        '  Please report it with the plan that shows it. READBACK_TRACE=1 prints where it happened.\n',
    );
    if (process.env['READBACK_TRACE'] && error instanceof Error) process.stderr.write(`${error.stack}\n`);
  }
}

/** A plan that a command can reckon with: read, without errors, with what follows from it. */
import { Refusal } from '../findings/refusal.ts';
import { type Examined, examine } from '../pipeline.ts';
import { readBeside, readPlanFile } from './read-plan-file.ts';
import { today } from './today.ts';

export interface WholePlan extends NonNullable<Examined['whole']> {
  readonly examined: Examined;
  /** Reads a file that the plan names. */
  read(path: string): Promise<Uint8Array>;
  readonly today: string;
}

/** @throws {Refusal} for a plan that could not be read as one; findings of the rules do not stand in the way */
export async function wholePlan(
  path: string,
  options: { readonly stdinFilename: string; readonly today?: string },
): Promise<WholePlan> {
  const file = await readPlanFile(path, options.stdinFilename);
  const read = (beside: string) => readBeside(file.folder, beside);
  const date = today(options.today);
  const examined = await examine(file.text, file.name, { today: date, read });
  if (!examined.whole) {
    const [first] = examined.findings;
    const where = first
      ? ` ${first.place.file}:${first.place.line}:${first.place.column}: ${first.message}`
      : '';
    throw new Refusal(
      `The plan has errors that stand in the way.${where}`,
      `\`readback check ${path}\` shows them all.`,
    );
  }
  return { ...examined.whole, examined, read, today: date };
}

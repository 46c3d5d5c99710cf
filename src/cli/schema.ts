/** `readback schema`: JSON Schema of the plan language, of rules files, or of what `check --json` prints. */
import { writeFile } from 'node:fs/promises';
import { Refusal } from '../findings/refusal.ts';
import type { ExitStatus } from './end-with.ts';

export interface SchemaOptions {
  readonly out?: string;
  readonly rules?: true;
  readonly findings?: true;
}

export async function schema(options: SchemaOptions): Promise<ExitStatus> {
  if (options.rules && options.findings)
    throw new Refusal(
      '--rules and --findings ask for two different schemas.',
      'Ask for one of them at a time.',
    );
  const text = `${JSON.stringify(await wanted(options), null, 2)}\n`;
  if (options.out === undefined) {
    process.stdout.write(text);
    return 0;
  }
  await writeFile(options.out, text).catch((error: Error) => {
    throw new Refusal(`${options.out} could not be written: ${error.message}.`);
  });
  const kind = options.rules ? 'rules file' : 'plan';
  process.stderr.write(
    options.findings
      ? `Wrote ${options.out}.\n`
      : `Wrote ${options.out}. First line of a ${kind}:  # yaml-language-server: $schema=./${options.out}\n`,
  );
  return 0;
}

async function wanted({ rules, findings }: SchemaOptions): Promise<object> {
  if (findings) return (await import('../findings/findings-schema.ts')).findingsSchema;
  if (rules) return (await import('../plan/rules-json-schema.ts')).rulesJsonSchema();
  return (await import('../plan/json-schema.ts')).jsonSchema();
}

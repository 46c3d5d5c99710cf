/** `readback schema`: JSON Schema of the plan language, for editors. */
import { writeFile } from 'node:fs/promises';
import { Refusal } from '../findings/refusal.ts';
import { jsonSchema } from '../plan/json-schema.ts';
import type { ExitStatus } from './end-with.ts';

export async function schema(options: { readonly out?: string }): Promise<ExitStatus> {
  const text = `${JSON.stringify(jsonSchema(), null, 2)}\n`;
  if (options.out === undefined) {
    process.stdout.write(text);
    return 0;
  }
  await writeFile(options.out, text).catch((error: Error) => {
    throw new Refusal(`${options.out} could not be written: ${error.message}.`);
  });
  process.stderr.write(
    `Wrote ${options.out}. First line of a plan:  # yaml-language-server: $schema=./${options.out}\n`,
  );
  return 0;
}

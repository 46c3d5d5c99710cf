/** `readback checkcode`: the plan check of a plan, and how it is spelled. */
import { plainSpellingWords, spellingWords } from '../radio/spelling.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';

export async function checkcode(
  path: string,
  options: { readonly json?: true; readonly color?: boolean },
): Promise<ExitStatus> {
  const { plan, check, file } = await loadSubject(path, options);
  const words = plainSpellingWords(check);
  if (options.json) {
    const shape = {
      plan: file.name,
      title: plan.title,
      revision: plan.revision,
      check,
      words,
      international: spellingWords(check),
    };
    process.stdout.write(`${JSON.stringify(shape, null, 2)}\n`);
    return 0;
  }
  const { strong, faint } = palette(process.stdout, options);
  process.stdout.write(
    `${strong(check)}  ${words.join(' ')}\n${faint(`${plan.title}, revision ${plan.revision}`)}\n`,
  );
  return 0;
}

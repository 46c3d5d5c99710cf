#!/usr/bin/env node
/**
 * The program. Each command's work is imported when that command runs, since start-up time counts; what a
 * command is called and how it is used stands here, so that help needs nothing more.
 */
import { Command, CommanderError, Option } from 'commander';
import { endWith } from './end-with.ts';
import { version } from './version.ts';

const program = new Command('readback')
  .description("Checks a volunteer group's radio plan and prints what its members carry.")
  .version(version)
  .exitOverride()
  .showHelpAfterError('(`readback --help` lists the commands; `readback COMMAND --help` shows one.)')
  .option('--no-color', 'plain text, even on a terminal (NO_COLOR does the same)')
  .addHelpText(
    'after',
    `
Examples:
  readback new plan.yaml             a small valid plan to start from
  readback check plan.yaml           what is wrong with it, most serious first
  readback build plan.yaml           cards, worksheets and the channel list, into out/plan/
  readback explain offset/unusual    what a rule looks for, why, and how to mend it

Exit status: 0 nothing wrong; 1 findings; 2 the work could not be done.
Predictions and printed plans are aids: the law, local codes and licensed practice come first.`,
  );

const today = new Option('--today <date>', 'check as of this date instead of today').argParser(
  (text) => text,
);

program
  .command('check')
  .description('all findings, most serious first, each with its place in the file')
  .argument('<plan...>', 'plan files; - reads standard input')
  .option('--json', 'findings as JSON')
  .addOption(
    new Option('--format <format>', 'how to print')
      .choices(['text', 'json', 'sarif', 'github'])
      .default('text'),
  )
  .option('--strict', 'exit with 1 on warnings as well')
  .option('--quiet', 'errors only')
  .option('--stdin-filename <name>', 'what to call standard input in findings', 'standard input')
  .addOption(today)
  .addHelpText(
    'after',
    '\nExamples:\n  readback check plan.yaml\n  readback check --strict plans/*.yaml\n  readback check --json plan.yaml | less\n  cat plan.yaml | readback check -',
  )
  .action(async (plans: string[], options) =>
    endWith((await import('./check.ts')).check(plans, { ...options, ...program.opts() })),
  );

program
  .command('build')
  .description('every document, into out/<plan name>/ or straight into DIR, all or nothing')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--out <dir>', 'where to write')
  .option('--templates <dir>', 'a folder whose templates replace those of the same name')
  .option('--json', 'the manifest as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText(
    'after',
    '\nExamples:\n  readback build plan.yaml\n  readback build plan.yaml --out /tmp/cards\n  readback build plan.yaml --templates our-templates',
  )
  .action(async (plan: string, options) =>
    endWith((await import('./build.ts')).build(plan, { ...options, ...program.opts() })),
  );

program
  .command('paths')
  .description('each radio path: distance, bearing, margin, verdict, and what was really heard')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--from <id>', 'only from this place, station or kind of radio')
  .option('--to <id>', 'only to this place, station or kind of radio')
  .option('--json', 'with every part of the link budget, as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText(
    'after',
    '\nExamples:\n  readback paths plan.yaml\n  readback paths plan.yaml --from trailhead\n  readback paths plan.yaml --from trailhead --to gap --json',
  )
  .action(async (plan: string, options) =>
    endWith((await import('./paths.ts')).paths(plan, { ...options, ...program.opts() })),
  );

program
  .command('exposure')
  .description('radio-frequency exposure: the distance to keep from each antenna')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--json', 'as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText('after', '\nExample:\n  readback exposure plan.yaml')
  .action(async (plan: string, options) =>
    endWith((await import('./exposure.ts')).exposure(plan, { ...options, ...program.opts() })),
  );

program
  .command('explain')
  .description('a rule: what it looks for, why, its source, how to mend it; without a rule, all of them')
  .argument('[rule]', 'such as offset/unusual')
  .option('--json', 'as JSON')
  .addHelpText('after', '\nExamples:\n  readback explain\n  readback explain offset/unusual')
  .action(async (rule: string | undefined, options) =>
    endWith((await import('./explain.ts')).explain(rule, { ...options, ...program.opts() })),
  );

program
  .command('new')
  .description('a small valid plan to start from')
  .argument('<file>', 'the file to write; - writes to standard output')
  .addHelpText('after', '\nExamples:\n  readback new plan.yaml\n  readback new - | less')
  .action(async (file: string) => endWith((await import('./new.ts')).newPlan(file)));

program
  .command('schema')
  .description('JSON Schema of the plan language, for editors')
  .option('--out <file>', 'write it to a file instead of standard output')
  .addHelpText(
    'after',
    '\nExample:\n  readback schema --out plan.schema.json\nand as the first line of a plan:\n  # yaml-language-server: $schema=./plan.schema.json',
  )
  .action(async (options) => endWith((await import('./schema.ts')).schema(options)));

try {
  await program.parseAsync();
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
  else await endWith(Promise.reject(error));
}

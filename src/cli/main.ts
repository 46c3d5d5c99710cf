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
  .command('new')
  .description('a small valid plan to start from')
  .argument('<file>', 'the file to write; - writes to standard output')
  .addHelpText('after', '\nExamples:\n  readback new plan.yaml\n  readback new - | less')
  .action(async (file: string) => endWith((await import('./new.ts')).newPlan(file)));

program
  .command('check')
  .description('all findings, most serious first, each with its place in the file')
  .argument('<plan...>', 'plan files; - reads standard input')
  .option('--json', 'findings as JSON; the same as --format json')
  .addOption(
    new Option('--format <format>', 'how to print')
      .choices(['text', 'json', 'sarif', 'github'])
      .default('text')
      .conflicts('json'),
  )
  .option('--strict', 'exit with 1 on warnings as well')
  .option('--quiet', 'list errors only; the rest is counted')
  .option('--paths', 'predict the radio paths too, and say which ladders and places they fail')
  .option('--stdin-filename <name>', 'what to call standard input in findings', 'standard input')
  .addOption(today)
  .addHelpText(
    'after',
    `
Examples:
  readback check plan.yaml
  readback check --strict plans/*.yaml
  readback check --json plan.yaml | less
  cat plan.yaml | readback check -

What the plan accepts is listed after the findings with its reason and its last
day; in JSON under \`accepted\`, in SARIF as suppressed results. Where one of
several plans cannot be read, the others are checked all the same.

Exit status: 0 no errors (with --strict no warnings either); 1 findings; 2 a plan
could not be read. --quiet changes what is listed and nothing else.`,
  )
  .action(async (plans: string[], options) =>
    endWith((await import('./check.ts')).check(plans, { ...options, ...program.opts() })),
  );

program
  .command('explain')
  .description('a rule: what it looks for, why, its source, how to mend it; or those of a topic, or all')
  .argument('[rule]', 'such as offset/unusual')
  .option('--json', 'as JSON')
  .addHelpText('after', '\nExamples:\n  readback explain\n  readback explain offset/unusual')
  .action(async (rule: string | undefined, options) =>
    endWith((await import('./explain.ts')).explain(rule, { ...options, ...program.opts() })),
  );

program
  .command('build')
  .description('every document, into out/<plan name>/ or straight into DIR, all or nothing')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--out <dir>', 'where to write')
  .option(
    '--templates <dir>',
    'a folder whose templates and words replace those of the program; its own language too',
  )
  .option('--since <plan>', 'an older revision: what changed since stands in the booklet')
  .option('--packs', 'a folder for each member as well, with card, worksheets and calendar')
  .option('--test-sheet', 'a sheet as well that measures how far your printer sets back from front')
  .option('--json', 'the manifest as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText(
    'after',
    '\nExamples:\n  readback build plan.yaml\n  readback build plan.yaml --out /tmp/cards\n  readback build plan.yaml --packs --test-sheet\n  readback build plan.yaml --since plan-revision-2.yaml\n  readback build plan.yaml --templates our-templates',
  )
  .action(async (plan: string, options) =>
    endWith((await import('./build.ts')).build(plan, { ...options, ...program.opts() })),
  );

program
  .command('audit')
  .description('what was really entered in a radio, against the plan')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--radio <radio>', 'the kind of radio that was read, by its id in the plan')
  .option('--entries <file>', 'a CSV table of what the radio shows; - reads standard input')
  .option('--ask', 'type it in now, a channel at a time; --entries then names where to keep it')
  .option('--previous <plan>', 'the revision before, to know its values again')
  .option('--record <file>', 'keep a clean audit in this JSON file; else in the one that `plan.record` names')
  .option(
    '--for <owner>',
    'whose radio it is: of a member, by id, against their own sheet; else a serial number',
  )
  .option('--by <name>', 'who read it back, for the record')
  .option('--json', 'as JSON')
  .addOption(today)
  .addHelpText(
    'after',
    `
Columns of the table, by any of these names; one that is missing was not read:
  slot, name, receive, transmit, offset direction, offset, tone kind, tone,
  receive tone, width, power, mode, step, note
Cells as the display shows them: 146.94, 146.940, 146940 or 146.940.00; +, -,
plus, minus, off; 0.6, -0.6 or 600 kHz; 100 or 100.0; D023N; wide, 12.5; high,
5 W. A blank cell was not read; the word empty says the slot holds nothing.

--json prints { plan, radio, revision, check, clean, slots, slotsRead,
differences: [{ slot, name, field, shown, planned, message, press, cause, likely,
noticed, effect }], unclear: [{ slot, field, line, message }],
unread: [{ slot, name, fields, whole }], counts: { heard, unheard, harmless } }.

Exit status: 0 frequencies, offsets and tones of all slots were read and nothing
differs; 1 something differs, is unclear or was not read; 2 the work could not
be done.

Examples:
  readback audit plan.yaml --radio handheld --entries inez.csv
  readback audit plan.yaml --radio handheld --ask --entries inez.csv
  readback audit plan.yaml --radio handheld --entries inez.csv \\
      --previous plan-r2.yaml --record radios.json --for inez --by ward`,
  )
  .action(async (plan: string, options) =>
    endWith((await import('./audit.ts')).audit(plan, { ...options, ...program.opts() })),
  );

program
  .command('compare')
  .description('what changed between two revisions, for whom, and what each radio must be given anew')
  .argument('<old>', 'the plan of the revision before')
  .argument('<new>', 'the plan as it is now')
  .option('--out <dir>', 'write a change card and worksheets with only the slots to enter again')
  .option(
    '--templates <dir>',
    'a folder whose templates and words replace those of the program; its own language too',
  )
  .option('--json', 'as JSON')
  .addHelpText(
    'after',
    `
By meaning and not by text: spacing, comments and the order of entries count for
nothing. Told are changed channels, members, check-ins and ladders, the slots of
each kind of radio to enter again, and what makes an old card dangerous.

Examples:
  readback compare plan-r2.yaml plan.yaml
  readback compare plan-r2.yaml plan.yaml --out out/changes`,
  )
  .action(async (old: string, now: string, options) =>
    endWith((await import('./compare.ts')).compare(old, now, { ...options, ...program.opts() })),
  );

program
  .command('log')
  .description('adds a trial to the plan file: what was tried from where, and what was heard')
  .argument('<plan>', 'the plan file to write into')
  .argument('<trial...>', 'one line, as below')
  .option('--dry-run', 'show the change and write nothing')
  .option('--json', 'as JSON')
  .addOption(today)
  .addHelpText(
    'after',
    `
The line:
  [DATE] PLACE to STATION [on SLOT] [with RADIO] [by MEMBER] heard WORD[: REPORT]
WORD is readable, weak, broken or nothing. PLACE, STATION, RADIO and MEMBER go by
id or whole name; a station may be a repeater, digipeater, mailbox, place or
member. Without a date it is today's.
Only the trial is put in: every other byte of the file stays as it is.

Examples:
  readback log plan.yaml "2026-11-21 trailhead to gap on 1 with handheld by inez
      heard readable: 5 by 7"
  readback log plan.yaml "ford to gap on 1 heard nothing" --dry-run`,
  )
  .action(async (plan: string, trial: string[], options) =>
    endWith((await import('./log.ts')).log(plan, trial, { ...options, ...program.opts() })),
  );

program
  .command('checkcode')
  .description('the plan check of a plan, and how it is spelled by voice')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--json', 'as JSON')
  .addHelpText('after', '\nExample:\n  readback checkcode plan.yaml')
  .action(async (plan: string, options) =>
    endWith((await import('./checkcode.ts')).checkcode(plan, { ...options, ...program.opts() })),
  );

program
  .command('verify')
  .description('which revision somebody holds, by the plan check they read out')
  .argument('<code>', 'as heard: N5L3, n5-l3 or "November Five Lima Three"')
  .argument('<plan...>', 'plans kept of each revision; of a folder, all its .yaml files')
  .option('--json', 'as JSON')
  .addHelpText(
    'after',
    `
The newest revision of a title is the one that should be held. A check that
differs from a kept one by one character, or by two exchanged, is told as near:
ask again.

Exit status: 0 the newest revision; 1 an older one, a near one or none.

Examples:
  readback verify N5L3 plan.yaml plan-r2.yaml
  readback verify "November Five Lima Three" kept-plans/`,
  )
  .action(async (code: string, plans: string[], options) =>
    endWith((await import('./verify.ts')).verify(code, plans, { ...options, ...program.opts() })),
  );

program
  .command('import')
  .description('a roster or a table of channels from a spreadsheet, as entries of a plan')
  .argument('<table>', 'a CSV file with a head')
  .addOption(
    new Option('--kind <kind>', 'what the table holds').choices(['roster', 'channels']).makeOptionMandatory(),
  )
  .option('--map <file>', 'a YAML file: one "Head of column: field" a line')
  .option('--ask', 'ask what each column is')
  .option('--into <plan>', 'put the entries into this plan file; else they are printed')
  .option('--dry-run', 'with --into: print the entries and write nothing')
  .addHelpText(
    'after',
    `
Nothing is guessed: a column that is not mapped is listed and left out, and a
cell that cannot be read stops the import with its line.

Fields of a roster: id, name, radios, at, roams, SERVICE call, SERVICE class,
SERVICE expires, contact WORD (amateur call, gmrs expires, contact phone).
Fields of channels: slot, name, use, receive, transmit, offset direction, offset,
listen, standard, tone, receive tone, width, mode, power, service.
A column mapped to "leave out" is left out on purpose.

Exit status: 0 imported; 1 a row could not be read; 2 the work could not be done.

Examples:
  readback import roster.csv --kind roster --ask
  readback import roster.csv --kind roster --map roster-map.yaml --into plan.yaml`,
  )
  .action(async (table: string, options) =>
    endWith((await import('./import.ts')).importFile(table, { ...options, ...program.opts() })),
  );

program
  .command('paths')
  .description('each radio path: distance, bearing, margin, verdict, and what was really heard')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--from <id>', 'only from this place, station or kind of radio')
  .option('--to <id>', 'only to this place, station or kind of radio')
  .option('--trials', 'each trial beside its prediction, and what the trials say of each kind of radio')
  .option('--json', 'with every part of the link budget, as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText(
    'after',
    `
--json prints { plan, revision, paths: [{ from, to, slot, members, distanceM,
bearingDeg, returnBearingDeg, magneticBearingDeg, verdict, probability,
marginDb, spreadDb, there, back, obstacle, trials: [{ date, heard, report }] }]
}, ids as in the plan, an end as { place, radio } or { repeater, mailbox or
digipeater, place }. Without elevation data noData says why, in place of verdict
to obstacle. there and back, the ways that are sent: { lossDb, signalDbm,
thresholdDbm, marginDb, parts: [{ what, db, fromMemory }] }. obstacle: {
latitudeDeg, longitudeDeg, alongM, groundM, aboveLineM, firstFresnelZoneM }.
With --trials: { plan, revision, trials: [{ index, date, radio, heard,
predicted: a path as above }], radios: [{ radio, trials, meanErrorDb, spreadDb,
spreadFitted, offeredDb }], withoutPrediction: indexes of trials }. Db is
decibels, Dbm decibels over a milliwatt, M metres, Deg degrees, probability 0 to
1.

Examples:
  readback paths plan.yaml
  readback paths plan.yaml --from trailhead
  readback paths plan.yaml --from trailhead --to gap --json`,
  )
  .action(async (plan: string, options) =>
    endWith((await import('./paths.ts')).paths(plan, { ...options, ...program.opts() })),
  );

program
  .command('ground')
  .description('the nearest ground from which a path closes, by walking time')
  .argument('<plan>', 'a plan file; - reads standard input')
  .requiredOption('--from <place>', 'where they are')
  .requiredOption('--to <station>', 'a repeater, mailbox, digipeater, member or place')
  .option('--radio <radio>', 'the kind of radio they carry; else a hand-held that may be used')
  .option('--channel <slot>', 'the slot; else the first that leads there')
  .option('--chance <percent>', 'how sure it must be', '90')
  .option('--within <time>', 'how long they would walk', '2 h')
  .option('--on-paths', 'reckon with paths to walk on')
  .option('--json', 'as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText(
    'after',
    `
Where the last trial from there heard nothing, or heard it broken, the trial
overrules a prediction that the path closes: ground is then named with 10 dB
more than where they are.

--json prints { from, to, slot, wanted, here: { verdict, marginDb, probability
}, tried: the last trial { date, heard, report } or null, tooHopeful: whether it
overrules the prediction, raisedToM: the lowest antenna here with the chance
wanted or null, spots, best, or noData: why there is no answer }. from and to
are { kind, place, radio } of a member or { kind, id, place } of a station.
spots, quickest first, and best are { latitudeDeg, longitudeDeg, locator,
groundM, walkS, walkM, climbM, marginDb, probability }. Db is decibels, M
metres, S seconds, Deg degrees; wanted and probability are 0 to 1.

Examples:
  readback ground plan.yaml --from trailhead --to gap
  readback ground plan.yaml --from shelter --to ward --channel 3 --within 45min`,
  )
  .action(async (plan: string, options) =>
    endWith((await import('./ground.ts')).ground(plan, { ...options, ...program.opts() })),
  );

program
  .command('reach')
  .description('the margin to a station at every cell of the ground, as GeoTIFF and as a chart')
  .argument('<plan>', 'a plan file; - reads standard input')
  .requiredOption('--station <id>', 'a repeater, mailbox, digipeater, member or place')
  .option('--radio <radio>', 'the kind of radio carried; else a hand-held that may be used')
  .option('--channel <slot>', 'the slot; else the first that leads there')
  .option('--out <dir>', 'where to write; else out/<plan name>/reach')
  .option('--json', 'what was reckoned, as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'plan.yaml')
  .addOption(today)
  .addHelpText(
    'after',
    '\nA cell stands for somebody in the field: under the trees of the plan, where `terrain` names `woodland`.\nElevation files are in latitude and longitude.\n\nExamples:\n  readback reach plan.yaml --station gap\n  readback reach plan.yaml --station home --radio mobile --out charts',
  )
  .action(async (plan: string, options) =>
    endWith((await import('./reach.ts')).reach(plan, { ...options, ...program.opts() })),
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
  .command('outages')
  .description('what is lost, and who is cut off, when one thing fails, or two')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--two', 'what two failures at once do as well')
  .option('--json', 'as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'standard input')
  .addOption(today)
  .addHelpText('after', '\nExamples:\n  readback outages plan.yaml\n  readback outages plan.yaml --two')
  .action(async (plan: string, options) =>
    endWith((await import('./outages.ts')).outages(plan, { ...options, ...program.opts() })),
  );

program
  .command('times')
  .description('coming check-ins in local time and UTC, whose turn it is, the longest silence of each member')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--days <number>', 'how many days', '14')
  .option('--from <date>', 'the first day, instead of today or the day the plan takes effect')
  .option('--member <id>', 'one member alone')
  .option('--json', 'as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'standard input')
  .addOption(today)
  .addHelpText(
    'after',
    '\nExamples:\n  readback times plan.yaml\n  readback times plan.yaml --days 3 --member inez\n  readback times plan.yaml --from 2027-03-13 --days 2',
  )
  .action(async (plan: string, options) =>
    endWith((await import('./times.ts')).times(plan, { ...options, ...program.opts() })),
  );

program
  .command('airtime')
  .description('packet: how long a message takes over each route, and how much the window holds')
  .argument('<plan>', 'a plan file; - reads standard input')
  .option('--characters <number>', 'length of the message', '500')
  .option('--json', 'as JSON')
  .option('--stdin-filename <name>', 'what to call standard input', 'standard input')
  .addOption(today)
  .addHelpText(
    'after',
    '\nExamples:\n  readback airtime plan.yaml\n  readback airtime plan.yaml --characters 160',
  )
  .action(async (plan: string, options) =>
    endWith((await import('./airtime.ts')).airtime(plan, { ...options, ...program.opts() })),
  );

program
  .command('schema')
  .description('JSON Schema of the plan language, for editors')
  .option('--rules', 'of rules files instead')
  .option('--findings', 'of what check --json prints instead')
  .option('--out <file>', 'write it to a file instead of standard output')
  .addHelpText(
    'after',
    '\nExample:\n  readback schema --out plan.schema.json\nand as the first line of a plan:\n  # yaml-language-server: $schema=./plan.schema.json',
  )
  .action(async (options) => endWith((await import('./schema.ts')).schema(options)));

program.parseAsync().catch((error: unknown) => {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
  else return endWith(Promise.reject(error));
  return undefined;
});

/**
 * Benchmarks: whole processes, as ratios in one run to something outside the project that does the least
 * that could be asked. Ratios move little from machine to machine; seconds do.
 *
 *   npm run bench            all of them
 *   npm run bench -- check   those whose name holds the word
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { benchCheck } from './bench-check.ts';
import { benchPrint } from './bench-print.ts';
import { benchReach } from './reach.ts';

const program = 'out/.program/main.js';
const folder = mkdtempSync(join(tmpdir(), 'readback-bench-'));

interface Bench {
  readonly name: string;
  /** What it is measured against, and the most it should take of that. */
  readonly against: string;
  readonly aim: number;
  readonly ours: readonly string[];
  readonly theirs: readonly string[];
}

/** Pages of text by pdfkit alone, with the fonts the documents use: what drawing the same amount costs at least. */
function barePdf(pages: number, linesPerPage: number): string {
  const path = join(folder, `bare-${pages}.mjs`);
  writeFileSync(
    path,
    `import { createWriteStream } from 'node:fs';
import { createRequire } from 'node:module';
const require = createRequire(${JSON.stringify(join(process.cwd(), 'package.json'))});
const PDFDocument = require('pdfkit');
const regular = require.resolve('@fontsource/b612/files/b612-latin-400-normal.woff');
const bold = require.resolve('@fontsource/b612/files/b612-latin-700-normal.woff');
const document = new PDFDocument({ size: 'LETTER', autoFirstPage: false });
document.pipe(createWriteStream(${JSON.stringify(join(folder, 'bare.pdf'))}));
for (let page = 0; page < ${pages}; page++) {
  document.addPage();
  for (let line = 0; line < ${linesPerPage}; line++) {
    document.font(line % 4 ? regular : bold).fontSize(9).text('1  GAP     146.940  -0.6  100.0  high power ' + line, 50, 50 + line * 13, { lineBreak: false });
  }
}
document.end();
`,
  );
  return path;
}

const benches: readonly Bench[] = [
  {
    name: 'check of the demo',
    against: 'node -e 0',
    aim: 2.5,
    ours: [program, 'check', 'plans/hickory-gap.yaml'],
    theirs: ['-e', '0'],
  },
  {
    name: 'build of the demo',
    against: 'a bare pdfkit script that draws as many pages of text',
    aim: 1.5,
    // Booklet, cards, worksheets and the channel list of the demo come to 34 pages.
    ours: [program, 'build', 'plans/hickory-gap.yaml', '--out', join(folder, 'demo')],
    theirs: [barePdf(34, 50)],
  },
];

function seconds(args: readonly string[]): number {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr}`);
  return Number(process.hrtime.bigint() - start) / 1e9;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

const wanted = process.argv.slice(2);
for (const bench of benches.filter(({ name }) => wanted.every((word) => name.includes(word)))) {
  const ours: number[] = [];
  const theirs: number[] = [];
  // Turn about, so that whatever else the machine does falls on both.
  for (let turn = 0; turn < 11; turn++) {
    ours.push(seconds(bench.ours));
    theirs.push(seconds(bench.theirs));
  }
  const ratio = median(ours) / median(theirs);
  const verdict = ratio <= bench.aim ? 'within' : 'above';
  process.stdout.write(
    `${bench.name}: ${ratio.toFixed(2)} times ${bench.against} (${median(ours).toFixed(3)} s against ${median(theirs).toFixed(3)} s), ${verdict} the aim of ${bench.aim}\n`,
  );
}
if (wanted.every((word) => 'check of large plans'.includes(word))) benchCheck(program);
if (wanted.every((word) => 'print of cards and booklet'.includes(word))) benchPrint();
rmSync(folder, { recursive: true, force: true });
if (wanted.every((word) => 'reach'.includes(word))) await benchReach();

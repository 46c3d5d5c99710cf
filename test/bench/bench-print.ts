/**
 * A thousand cards and a booklet of two hundred pages, against a bare pdfkit script that draws the same texts at
 * the same places, and against the same content as HTML printed by headless Chromium, where that is installed.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fontFiles } from '../../src/documents/print/fonts.ts';

const mostAgainstBare = 1.5;
const mostAgainstChromium = 0.1;

export function benchPrint(): void {
  mkdirSync('out', { recursive: true });
  const folder = mkdtempSync('out/.bench-');
  try {
    run(process.execPath, ['.ci/compile.mjs', join(folder, 'program'), 'test/bench/print-process.ts']);
    const program = join(folder, 'program', 'main.js');
    for (const what of ['cards', 'booklet']) {
      const texts = join(folder, `${what}.json`);
      run(process.execPath, [program, 'texts', what, texts]);
      const page = join(folder, `${what}.html`);
      run(process.execPath, [program, 'html', what, page]);
      // As the compiled program has what V8 made of it while the demo was built.
      run(process.execPath, [program, 'build', what, join(folder, 'ours.pdf')], {
        READBACK_WRITE_CACHE: '1',
      });
      const bare = bareScript(folder, what, texts);
      const hasChromium = spawnSync('chromium', ['--version']).error === undefined;
      const [ours, drawn, printed]: [number[], number[], number[]] = [[], [], []];
      let pages = '';
      for (let turn = 0; turn < 5; turn += 1) {
        ours.push(
          seconds(() => {
            pages = run(process.execPath, [program, 'build', what, join(folder, 'ours.pdf')]).trim();
          }),
        );
        drawn.push(seconds(() => run(process.execPath, [bare])));
        if (hasChromium && turn < 3)
          printed.push(
            seconds(() =>
              run('chromium', [
                '--headless',
                '--no-sandbox',
                '--disable-gpu',
                `--user-data-dir=${join(folder, 'profile')}`,
                '--no-pdf-header-footer',
                `--print-to-pdf=${join(folder, 'theirs.pdf')}`,
                `file://${join(process.cwd(), page)}`,
              ]),
            ),
          );
      }
      const name = what === 'cards' ? '1000 cards' : 'a booklet';
      say(
        `${name}, ${pages} pages`,
        ours,
        'a bare pdfkit script that draws the same text',
        drawn,
        mostAgainstBare,
      );
      if (hasChromium)
        say(
          `${name}, ${pages} pages`,
          ours,
          'headless Chromium printing the same HTML',
          printed,
          mostAgainstChromium,
        );
      else process.stdout.write(`${name}: no headless Chromium to measure against\n`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function bareScript(folder: string, what: string, texts: string): string {
  const path = join(folder, `bare-${what}.mjs`);
  writeFileSync(
    path,
    `import { createWriteStream, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
const require = createRequire(${JSON.stringify(join(process.cwd(), 'package.json'))});
const PDFDocument = require('pdfkit');
const files = ${JSON.stringify(fontFiles)};
const fonts = Object.fromEntries(Object.entries(files).map(([name, file]) => [name, require.resolve(file)]));
const document = new PDFDocument({ size: 'LETTER', autoFirstPage: false });
document.pipe(createWriteStream(${JSON.stringify(join(folder, 'bare.pdf'))}));
for (const texts of JSON.parse(readFileSync(${JSON.stringify(texts)}, 'utf8'))) {
  document.addPage();
  for (const { x, y, text, font, sizePt } of texts)
    document.font(fonts[font]).fontSize(sizePt).text(text, x, y, { lineBreak: false });
}
document.end();
`,
  );
  return path;
}

function run(program: string, args: readonly string[], environment: NodeJS.ProcessEnv = {}): string {
  const { status, stdout, stderr } = spawnSync(program, args, {
    encoding: 'utf8',
    maxBuffer: 1e8,
    env: { ...process.env, ...environment },
  });
  if (status !== 0) throw new Error(`${program} ${args[0]} ended with ${status}: ${stderr.slice(-500)}`);
  return stdout;
}

function seconds(work: () => void): number {
  const start = process.hrtime.bigint();
  work();
  return Number(process.hrtime.bigint() - start) / 1e9;
}

function say(
  name: string,
  ours: readonly number[],
  against: string,
  theirs: readonly number[],
  aim: number,
): void {
  const [own, other] = [median(ours), median(theirs)];
  const ratio = own / other;
  process.stdout.write(
    `${name}: ${ratio.toFixed(2)} times ${against} (${own.toFixed(2)} s against ${other.toFixed(2)} s), ${ratio <= aim ? 'within' : 'above'} the aim of ${aim}\n`,
  );
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

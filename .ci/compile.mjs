/**
 * Compiles the program into out/.program, or the folder named: one file for each command, with what they share apart, so that a
 * command loads what it needs and nothing else. Small libraries that every command needs are taken in
 * (starting from one file is what makes `check` quick); the heavy ones stay packages and are imported by the
 * commands that use them, pdfkit because it cannot be bundled at all.
 */
import { chmod, readdir, readFile, rm } from 'node:fs/promises';
import { build } from 'esbuild';

const { version, dependencies } = JSON.parse(await readFile('package.json', 'utf8'));
const takenIn = new Set(['commander', 'picocolors', 'string-width', 'yaml', 'zod']);
const workers = (await readdir('src/cli')).filter((name) => name.endsWith('-worker.ts'));

const outdir = process.argv[2] ?? 'out/.program';
await rm(outdir, { recursive: true, force: true });
await build({
  entryPoints: ['src/cli/main.ts', ...workers.map((name) => `src/cli/${name}`)],
  outdir,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  minifyWhitespace: false,
  legalComments: 'none',
  external: Object.keys(dependencies).filter((name) => !takenIn.has(name)),
  define: { READBACK_VERSION: JSON.stringify(version) },
  // Packages written for require() ask Node's own modules of it.
  banner: { js: "import{createRequire as __createRequire}from'node:module';const require=__createRequire(import.meta.url);" },
  logLevel: 'warning',
});
await chmod(`${outdir}/main.js`, 0o755);

/**
 * Compiles the program into out/.program, or the folder named.
 *
 * `program.cjs` is the whole program in one file, each command's part asleep until that command runs; the small
 * libraries every command needs are taken in with what they use and no more, the heavy ones stay packages. Beside it
 * lies `program.cache`, what V8 made of that text while the demo was checked: with it a run begins with compiled code
 * instead of text, which is a third of the time of a check. `main.js` brings the two together; a cache made by
 * another Node is passed over, and costs nothing but its gain.
 */
import { execFileSync } from 'node:child_process';
import { chmod, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';

const { version, dependencies } = JSON.parse(await readFile('package.json', 'utf8'));
const takenIn = new Set(['commander', 'picocolors', 'string-width', 'yaml', 'zod']);
const workers = (await readdir('src/cli')).filter((name) => name.endsWith('-worker.ts'));
const outdir = process.argv[2] ?? 'out/.program';

const shared = {
  bundle: true,
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  external: Object.keys(dependencies).filter((name) => !takenIn.has(name)),
  define: { READBACK_VERSION: JSON.stringify(version) },
  logLevel: 'warning',
};

const main = `#!/usr/bin/env node
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';

const file = fileURLToPath(new URL('./program.cjs', import.meta.url));
const cacheFile = fileURLToPath(new URL('./program.cache', import.meta.url));
let cachedData;
try {
  cachedData = readFileSync(cacheFile);
} catch {} // without it, only slower
const script = new Script(readFileSync(file, 'utf8'), { filename: file, cachedData });
const module = { exports: {} };
script.runInThisContext()(module.exports, createRequire(import.meta.url), module, file, dirname(file), import.meta.url);
if (process.env.READBACK_WRITE_CACHE) process.on('exit', () => writeFileSync(cacheFile, script.createCachedData()));
`;

await rm(outdir, { recursive: true, force: true });
await build({
  ...shared,
  entryPoints: ['src/cli/main.ts'],
  outfile: `${outdir}/program.cjs`,
  format: 'cjs',
  define: { ...shared.define, 'import.meta.url': '__programUrl' },
  // Code out of a cache cannot import(); packages are required, which Node 20.19 does with modules of either kind.
  supported: { 'dynamic-import': false },
  banner: { js: '(function (exports, require, module, __filename, __dirname, __programUrl) {' },
  footer: { js: '})' },
});
await build({ ...shared, entryPoints: workers.map((name) => `src/cli/${name}`), outdir, format: 'esm' });
await writeFile(`${outdir}/main.js`, main);
await chmod(`${outdir}/main.js`, 0o755);
execFileSync(process.execPath, [`${outdir}/main.js`, 'check', 'plans/hickory-gap.yaml'], {
  env: { ...process.env, READBACK_WRITE_CACHE: '1' },
  stdio: ['ignore', 'ignore', 'inherit'],
});

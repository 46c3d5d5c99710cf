/**
 * Compiles the program into out/.program, or the folder named; or another one, for a benchmark, whose first file is
 * named behind the folder.
 *
 * `program.cjs` is the whole program in one file, each command's part asleep until that command runs; the small
 * libraries every command needs are taken in with what they use and no more. Each heavy one has a file of its own in
 * `packages/`, read when a command asks for it. Beside them lies what V8 made of these texts while the demo was checked
 * and while it was built: with it a run begins with compiled code instead of text, which is a third of the time of a check.
 * `main.js` brings it all together; a cache made by another Node is passed over, and costs nothing but its gain.
 */
import { execFileSync } from 'node:child_process';
import { chmod, copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, resolve } from 'node:path';
import { build } from 'esbuild';

const { version, dependencies } = JSON.parse(await readFile('package.json', 'utf8'));
const takenIn = new Set(['commander', 'picocolors', 'string-width', 'yaml', 'zod']);
/** Typefaces: read as files. */
const files = new Set(['@fontsource/b612', '@fontsource/b612-mono', 'dejavu-fonts-ttf']);
const heavy = [
  ...Object.keys(dependencies).filter((name) => !takenIn.has(name) && !files.has(name)),
  // The part of it that renders prepared templates.
  'handlebars/runtime',
];
const workers = (await readdir('src/cli')).filter((name) => name.endsWith('-worker.ts'));
const [outdir = 'out/.program', entry = 'src/cli/main.ts'] = process.argv.slice(2);

const shared = {
  bundle: true,
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  logLevel: 'warning',
};
const program = {
  ...shared,
  external: [...heavy, ...files],
  define: { READBACK_VERSION: JSON.stringify(version) },
};
/** Text of one byte a letter is read in a third of the time; esbuild leaves others in patterns. */
const notAscii = /[^\x00-\x7f]/g;
const escaped = (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`;
/** Code out of a cache is a function of what a module is given. */
const wrapped = {
  format: 'cjs',
  // Code out of a cache cannot import(); packages are required, which Node 20.19 does with modules of either kind.
  supported: { 'dynamic-import': false },
  banner: { js: '(function (exports, require, module, __filename, __dirname, __programUrl, __programTemplates) {' },
  footer: { js: '})' },
};

/**
 * Parts of the packages that no document comes to: unpacking .woff2, encryption, and breaking lines of its own. Loading
 * them takes longer than painting a card. Unpacking tables of characters is left to zlib, which needs a tenth of the time.
 */
const leftOut = ['brotli/decompress.js', '@noble/ciphers/aes', 'linebreak'];
const lighter = {
  name: 'lighter',
  setup({ onResolve, onLoad }) {
    for (const name of leftOut)
      onResolve({ filter: new RegExp(`^${name}$`) }, () => ({ path: name, namespace: 'left-out' }));
    onResolve({ filter: /^tiny-inflate$/ }, ({ path }) => ({ path, namespace: 'inflate' }));
    onLoad({ filter: /.*/, namespace: 'left-out' }, ({ path }) => ({
      contents: `const refuse = () => { throw new Error(${JSON.stringify(`${path} is left out by .ci/compile.mjs`)}); };
module.exports = new Proxy(refuse, { get: refuse, construct: refuse });`,
    }));
    onLoad({ filter: /.*/, namespace: 'inflate' }, () => ({
      contents: `const { inflateRawSync } = require('node:zlib');
module.exports = (packed, plain) => { plain.set(inflateRawSync(packed)); return plain; };`,
    }));
  },
};

/** Loaded when it is needed: commander asks for it at once, to start commands that are programs of their own, and here none are. */
const later = {
  name: 'later',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^(node:)?child_process$/ }, ({ importer }) =>
      importer.includes('commander') ? { path: 'child_process', namespace: 'later' } : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'later' }, ({ path }) => ({
      contents: `module.exports = { spawn: (...words) => require(${JSON.stringify(`node:${path}`)}).spawn(...words) };`,
    }));
  },
};

const main = `#!/usr/bin/env node
const { readFileSync, writeFileSync } = require('node:fs');
const { pathToFileURL } = require('node:url');
const { Script } = require('node:vm');

const heavy = new Set(${JSON.stringify(heavy)});
const taken = new Map();
const take = (name) => {
  if (!heavy.has(name)) return require(name);
  if (!taken.has(name)) taken.set(name, run(\`packages/\${name}\`, \`packages/\${name}\`, require));
  return taken.get(name);
};
const templates = () => run('templates', 'templates', require);
const command = process.argv.find((word, index) => index > 1 && !word.startsWith('-'));
const isBuild = command === 'build';
// Most of what a build runs, it runs a few times: optimising it takes more time than it saves. What is asked of V8 is
// to wait six times as long before it does.
if (isBuild) require('node:v8').setFlagsFromString('--interrupt-budget=400000');
// A build runs other code than a check, and a cache costs what it holds.
run('program', isBuild ? 'build' : 'program', take);

function run(name, cacheName, give) {
  const file = \`\${__dirname}/\${name}.cjs\`;
  const cacheFile = \`\${__dirname}/\${cacheName}.cache\`;
  let cachedData;
  try {
    cachedData = readFileSync(cacheFile);
  } catch {} // without it, only slower
  const script = new Script(readFileSync(file, 'latin1'), { filename: file, cachedData });
  const module = { exports: {} };
  if (process.env.READBACK_WRITE_CACHE)
    process.on('exit', () => writeFileSync(cacheFile, script.createCachedData()));
  script.runInThisContext()(module.exports, give, module, file, __dirname, pathToFileURL(__filename).href, templates);
  return module.exports;
}
`;

/** The program's templates as JavaScript, by the program's own means. */
async function preparedTemplates() {
  const tool = `${outdir}/prepare.cjs`;
  await build({
    ...shared,
    format: 'cjs',
    entryPoints: ['src/documents/print/render-template.ts'],
    outfile: tool,
  });
  const { prepareTemplate, preparedKey } = createRequire(import.meta.url)(resolve(tool));
  await rm(tool);
  const made = [];
  for (const name of (await readdir('templates', { recursive: true })).filter((name) => name.endsWith('.hbs')).toSorted()) {
    const source = await readFile(`templates/${name}`, 'utf8');
    const key = preparedKey(basename(name), source);
    made.push(`  [${JSON.stringify(key)}, ${await prepareTemplate(basename(name), source)}],`);
  }
  return `${wrapped.banner.js}\nmodule.exports = new Map([\n${made.join('\n')}\n]);\n${wrapped.footer.js}`.replace(
    notAscii,
    escaped,
  );
}

await rm(outdir, { recursive: true, force: true });
await mkdir(`${outdir}/packages/data`, { recursive: true });
await Promise.all([
  build({
    ...program,
    ...wrapped,
    entryPoints: [entry],
    outfile: `${outdir}/program.cjs`,
    plugins: [later],
    define: {
      ...program.define,
      'import.meta.url': '__programUrl',
      READBACK_TEMPLATES: '__programTemplates',
    },
  }),
  ...heavy.map((name) =>
    build({
      ...shared,
      ...wrapped,
      stdin: { contents: `module.exports = require(${JSON.stringify(name)});`, resolveDir: '.' },
      outfile: `${outdir}/packages/${name}.cjs`,
      plugins: [lighter],
    }),
  ),
  build({ ...program, entryPoints: workers.map((name) => `src/cli/${name}`), outdir, format: 'cjs' }),
]);
const programFile = `${outdir}/program.cjs`;
await writeFile(programFile, (await readFile(programFile, 'utf8')).replace(notAscii, escaped));
// pdfkit finds its colour profile beside itself.
const profile = 'data/sRGB_IEC61966_2_1.icc';
await copyFile(createRequire(import.meta.resolve('pdfkit')).resolve(`./${profile}`), `${outdir}/packages/${profile}`);
// Started without the loader of ES modules, which takes a tenth of the time of a check.
await writeFile(`${outdir}/package.json`, '{ "type": "commonjs" }\n');
await writeFile(`${outdir}/templates.cjs`, await preparedTemplates());
await writeFile(`${outdir}/main.js`, main);
await chmod(`${outdir}/main.js`, 0o755);
const demo = 'plans/hickory-gap.yaml';
const runs = [
  ['check', demo],
  ['build', demo, '--out', `${outdir}/warm`],
];
for (const words of process.argv[3] === undefined ? runs : [])
  execFileSync(process.execPath, [`${outdir}/main.js`, ...words], {
    env: { ...process.env, READBACK_WRITE_CACHE: '1' },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
await rm(`${outdir}/warm`, { recursive: true, force: true });

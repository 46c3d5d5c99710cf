/**
 * How the time of `check` grows with the plan: whole processes over generated plans of 100, 1,000 and 10,000
 * channels and members. Beside each stands the yaml library alone composing the same text, since that is the
 * least it can take.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { largePlan } from '../house/large-plan.ts';

const sizes = [100, 1_000, 10_000] as const;
const turns = 3;
/** Processor time may grow by this much more than the plan does. */
const mostGrowth = 1.25;
const mostSeconds = 2;

export function benchCheck(program: string): void {
  const folder = mkdtempSync(join(tmpdir(), 'readback-bench-'));
  const yaml = createRequire(import.meta.url).resolve('yaml');
  const script = `require(${JSON.stringify(yaml)}).parseDocument(require('node:fs').readFileSync(process.argv[1],'utf8'))`;
  let before: number | undefined;
  for (const size of sizes) {
    const path = join(folder, `${size}.yaml`);
    writeFileSync(path, largePlan(size));
    const ours = median(() => spent([program, 'check', '--today', '2026-11-25', path]));
    const yamlAlone = median(() => spent(['-e', script, path]));
    const growth = before === undefined ? undefined : ours.processor / before / 10;
    before = ours.processor;
    const words = [
      `check of ${size} channels and members: ${ours.wall.toFixed(2)} s, ${ours.processor.toFixed(2)} s of processor`,
      `${(ours.processor / yamlAlone.processor).toFixed(1)} times the yaml library alone`,
      ...(growth === undefined
        ? []
        : [`grew by ${growth.toFixed(2)} of what the plan did, ${within(growth, mostGrowth)}`]),
      ...(size === sizes.at(-1) ? [within(ours.wall, mostSeconds, ' s')] : []),
    ];
    process.stdout.write(`${words.join('; ')}\n`);
  }
  rmSync(folder, { recursive: true, force: true });
}

interface Spent {
  readonly wall: number;
  /** User and system time, which says less of what else the machine does. */
  readonly processor: number;
}

/** Makes a process say, as it ends, what processor time it took. */
const meter =
  "data:text/javascript,process.on('exit',()=>{const{user,system}=process.cpuUsage();process.stderr.write('\\nmetered '+(user+system))})";

function spent(args: readonly string[]): Spent {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, ['--import', meter, ...args], {
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  });
  const wall = Number(process.hrtime.bigint() - start) / 1e9;
  const metered = /\nmetered (\d+)$/.exec(stderr)?.[1];
  if ((status !== 0 && status !== 1) || metered === undefined)
    throw new Error(`${args.join(' ')} ended with ${status}: ${stderr}`);
  return { wall, processor: Number(metered) / 1e6 };
}

function median(measure: () => Spent): Spent {
  const all = Array.from({ length: turns }, measure).toSorted((a, b) => a.processor - b.processor);
  return all[turns >> 1] ?? { wall: Number.NaN, processor: Number.NaN };
}

function within(value: number, aim: number, unit = ''): string {
  return `${value <= aim ? 'within' : 'above'} the aim of ${aim}${unit}`;
}

/**
 * Compiles the program once, into a folder of this test run's own, so that whole-process tests run what the
 * source says now and two runs at once do not disturb each other.
 */
import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';

const root = new URL('../..', import.meta.url).pathname;

/** Vitest calls this by its name. */
export function setup(): () => void {
  // Two folders below the project, as out/.program is: the program finds its templates from there.
  const folder = `${root}out/.tested-${process.pid}`;
  execFileSync(process.execPath, ['.ci/compile.mjs', folder], { cwd: root, stdio: 'inherit' });
  process.env['READBACK_TESTED'] = `${folder}/main.js`;
  return () => rmSync(folder, { recursive: true, force: true });
}

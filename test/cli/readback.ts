/** Runs the compiled program as its users do: another process, its streams and its exit status. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

const projectFolder = new URL('../..', import.meta.url).pathname.replace(/\/$/, '');
export const demo = `${projectFolder}/plans/hickory-gap.yaml`;

export function programPath(): string {
  const path = process.env['READBACK_TESTED'];
  if (path === undefined) throw new Error('the program was not compiled for the tests');
  return path;
}

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Surroundings {
  readonly cwd?: string;
  readonly stdin?: string | Uint8Array;
  readonly env?: Readonly<Record<string, string>>;
}

/** The day on which the tests look at plans. */
export const theDay = '2026-11-25';

/** The environment is empty but for what is given, so that a test says all it depends on. */
export function readback(args: readonly string[], { cwd, stdin = '', env = {} }: Surroundings = {}): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [programPath(), ...args], {
    cwd: cwd ?? projectFolder,
    input: stdin,
    env: { PATH: process.env['PATH'] ?? '', SOURCE_DATE_EPOCH: String(Date.parse(theDay) / 1000), ...env },
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, out: stdout, err: stderr };
}

/** A folder that is gone when the test is over. */
export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'readback-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

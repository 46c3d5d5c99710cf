import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyFolder, readback } from './readback.ts';

test('writes a plan that has nothing wrong, and of which documents can be built', () => {
  const folder = emptyFolder();
  expect(readback(['new', 'plan.yaml'], { cwd: folder })).toMatchObject({ status: 0, out: '' });
  const checked = readback(['check', '--strict', 'plan.yaml'], { cwd: folder });
  expect(checked.out).toMatch(/No findings\.\n$/);
  expect(checked.status).toBe(0);
  expect(readback(['build', 'plan.yaml'], { cwd: folder }).status).toBe(0);
});

test('changes no file that is there', () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'plan.yaml'), 'mine');
  const { status, err } = readback(['new', 'plan.yaml'], { cwd: folder });
  expect(status).toBe(2);
  expect(err).toMatch(/plan\.yaml is there already/);
  expect(readFileSync(join(folder, 'plan.yaml'), 'utf8')).toBe('mine');
});

test('writes to standard output for -', () => {
  const { status, out } = readback(['new', '-']);
  expect(status).toBe(0);
  expect(readback(['check', '-'], { stdin: out }).status).toBe(0);
});

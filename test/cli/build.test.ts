import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { demo, emptyFolder, readback } from './readback.ts';

test('a letter that no typeface has is shown once, where the plan has it, and nothing is written', () => {
  const folder = emptyFolder();
  const file = join(folder, 'plan.yaml');
  const plan = readback(['new', '-']).out.replace('Sam Example', '無 Example');
  writeFileSync(file, `# 無 in a comment\n${plan}`);
  const { status, err } = readback(['build', 'plan.yaml'], { cwd: folder });
  expect(status).toBe(1);
  const line = plan.split('\n').findIndex((one) => one.includes('無')) + 2;
  expect(err).toMatch(new RegExp(`No typeface here has the character 無 .*\\n +plan\\.yaml:${line}:11 `));
  expect(err.match(/^error:/gm)).toHaveLength(1);
  expect(existsSync(join(folder, 'out'))).toBe(false);
});

test('what a build has found is shown by the command it names', () => {
  const { err } = readback(['build', demo, '--out', emptyFolder()]);
  expect(err).toMatch(/^\d+ findings, none an error; `readback check --paths .*` shows them\.$/m);
  const count = Number(/^\d+/m.exec(err)?.[0]);
  const { out } = readback(['check', '--paths', '--json', demo]);
  expect(JSON.parse(out).findings).toHaveLength(count);
});

test('cards with a code on the back are built, on each size that has room for it', () => {
  const text = readback(['new', '-']).out;
  for (const size of ['a7', 'index']) {
    const folder = emptyFolder();
    const file = join(folder, 'plan.yaml');
    writeFileSync(file, text.replace('size: id-1', `size: ${size}, qr: true`));
    const { status, err } = readback(['build', file, '--out', join(folder, 'out')]);
    expect(err).not.toMatch(/^error:|is not a function/m);
    expect(status).toBe(0);
    expect(existsSync(join(folder, 'out', 'cards.pdf'))).toBe(true);
  }
});

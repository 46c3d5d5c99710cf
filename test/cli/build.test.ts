import { existsSync, readFileSync, writeFileSync } from 'node:fs';
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

test('an older revision to compare with is read as a plan, and said where it is not older', () => {
  const folder = emptyFolder();
  const plan = readback(['new', '-']).out;
  writeFileSync(join(folder, 'plan.yaml'), plan.replace('revision: 1', 'revision: 2'));
  writeFileSync(join(folder, 'old.yaml'), plan);
  const built = readback(['build', 'plan.yaml', '--since', 'old.yaml'], { cwd: folder });
  expect(built.status, built.err).toBe(0);
  expect(readFileSync(join(folder, 'out/plan/booklet.html'), 'utf8')).toContain('Changes since revision 1');
  const same = readback(['build', 'plan.yaml', '--since', 'plan.yaml'], { cwd: folder });
  expect(same.err).toContain('plan.yaml is revision 2, and not older than the plan, which is revision 2.');
  expect(readback(['build', 'plan.yaml', '--since', 'none.yaml'], { cwd: folder }).status).toBe(2);
  writeFileSync(join(folder, 'theirs.yaml'), plan.replace(/title: .*/, 'title: The other valley'));
  const theirs = readback(['build', 'plan.yaml', '--since', 'theirs.yaml'], { cwd: folder });
  expect(theirs.status).toBe(2);
  expect(theirs.err).toContain('theirs.yaml is the plan of "The other valley"');
});

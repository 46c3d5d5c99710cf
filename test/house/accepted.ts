/**
 * Accepted output: what a plan gave when somebody last looked at it. It watches for change; whether it is
 * right is for other tests. `npm run accept` writes it anew, and the difference is read like code.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect } from 'vitest';
import { filesBelow, projectRoot } from './files-below.ts';

/** Compares texts by their path with those in a folder of test/golden, or writes them there. */
export function expectAccepted(name: string, texts: ReadonlyMap<string, string>): void {
  const folder = `test/golden/${name}`;
  if (process.env['ACCEPT'] === '1') {
    rmSync(join(projectRoot, folder), { recursive: true, force: true });
    for (const [path, text] of texts) {
      const file = join(projectRoot, folder, path);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
    }
    return;
  }
  const accepted = new Map(
    filesBelow(folder).map((file) => [
      file.slice(folder.length + 1),
      readFileSync(join(projectRoot, file), 'utf8'),
    ]),
  );
  const remedy = 'If this is meant, run `npm run accept` and read the difference.';
  expect([...accepted.keys()].sort(), remedy).toEqual([...texts.keys()].sort());
  for (const [path, text] of texts) expect(text, `${folder}/${path}: ${remedy}`).toBe(accepted.get(path));
}

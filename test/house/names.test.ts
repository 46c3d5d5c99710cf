import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { filesBelow, projectRoot } from './files-below.ts';
import { exportFlaws, nameFlaws, phraseFlaws } from './name-flaws.ts';

const read = (file: string) => readFileSync(`${projectRoot}/${file}`, 'utf8');
const code = [...filesBelow('src'), ...filesBelow('test')].filter((file) => file.endsWith('.ts'));

test('files and rooms are named after their subject', () => {
  expect(code.flatMap(nameFlaws)).toEqual([]);
});

test('every file has exports of its own, by name', () => {
  // The settings of the test runner must be a default export.
  const ours = code.filter((file) => file !== 'test/vitest.config.ts');
  expect(ours.flatMap((file) => exportFlaws(file, read(file)))).toEqual([]);
});

test('no text leans on anything but the project itself and published sources', () => {
  const words = ['src', 'test', 'templates', 'plans']
    .filter((folder) => existsSync(`${projectRoot}/${folder}`))
    .flatMap(filesBelow)
    .concat(readdirSync(projectRoot).filter((name) => name.endsWith('.md')))
    .filter(
      (file) => /\.(?:ts|md|yaml|hbs|css|json|csv|txt)$/.test(file) && !file.startsWith('test/house/name'),
    );
  expect(words.length).toBeGreaterThan(50);
  expect(words.flatMap((file) => phraseFlaws(file, read(file)))).toEqual([]);
});

// A test of the house is trusted only once it has been seen to fail.
describe('the test of names', () => {
  test.each([
    ['src/utils/text.ts', 2],
    ['src/plan/types.ts', 1],
    ['src/plan/helpers/x.ts', 1],
    ['src/plan/index.ts', 1],
    ['src/plan/loadPlan.ts', 1],
    ['src/plan/load_plan.ts', 1],
    ['src/stray.ts', 1],
    ['src/plan/load.ts', 0],
    ['src/pipeline.ts', 0],
    ['src/regulations/us/gmrs.ts', 0],
    ['test/plan/load.test.ts', 0],
  ])('finds in %s %d flaws', (file, count) => {
    expect(nameFlaws(file)).toHaveLength(count);
  });

  test('finds barrels and default exports', () => {
    expect(exportFlaws('a.ts', "export * from './b.ts';\nexport { c } from './c.ts';\n")).toHaveLength(1);
    expect(exportFlaws('a.ts', 'export default 1;\n')).toHaveLength(1);
    expect(exportFlaws('a.ts', "export { c } from './c.ts';\nexport const d = 1;\n")).toEqual([]);
  });

  test.each([
    ['see ..', 'shared', 'house.md'].join('/'),
    'as in issue 2',
    'the reference sheet says',
    '// TODO',
    '// @ts-ignore',
    '/work/main/src',
  ])('finds fault with %j', (line) => {
    expect(phraseFlaws('a.ts', `fine\n${line}`)).toEqual([expect.stringMatching(/^a\.ts:2 says /)]);
  });

  test('lets published issues and plain words pass', () => {
    expect(
      phraseFlaws('a.ts', 'RSS-210, Issue 11. The shared channel works/mains; an issue of the cards.'),
    ).toEqual([]);
  });
});

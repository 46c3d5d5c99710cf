import { expect, test } from 'vitest';
import { demo, emptyFolder, readback } from './readback.ts';

test('what reach says of a station fits 80 columns, but for the paths of its files, which stay whole', () => {
  const folder = emptyFolder();
  const { status, out, err } = readback(['reach', demo, '--station', 'gap', '--out', 'charts'], {
    cwd: folder,
  });
  expect({ status, err }).toEqual({ status: 0, err: '' });
  expect(out.replace(/\s+/g, ' ')).toMatch(
    /^Gap repeater \(Turkey Knob\), handheld, slot 1: of \d+ by \d+ cells solid \d+ %.* in line of sight \d+ %\. charts\/gap-handheld\.tif charts\/gap-handheld\.svg .*Only a trial proves a path\. $/,
  );
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

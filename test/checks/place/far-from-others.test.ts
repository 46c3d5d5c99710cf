import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const places = (mill: string) =>
  `places:\n  base: { name: Base, at: "36.6192, -84.2010", kind: base }\n  mill: { name: Mill, at: "${mill}", kind: base }`;

test('of two places on two continents both are named, for either may be astray', async () => {
  expect(await foundBy('place/far-from-others', places('36.5958, 84.2190'))).toEqual([
    expect.stringMatching(/^places\.mill\.at: Base and Mill stand some 1\d{4} km apart\.$/),
  ]);
});

test('two places in one valley are left alone', async () => {
  expect(await foundBy('place/far-from-others', places('36.5958, -84.2190'))).toEqual([]);
});

import { expect, test } from 'vitest';
import { publishedTones, starredTones } from '../../sources/ctcss-tones.ts';
import { dcsPairs } from '../../sources/dcs-pairs.ts';
import { findingsOf } from '../findings-of.ts';
import { foundBy } from '../found-by.ts';

const channels = (tones: readonly string[]) =>
  `channels:\n  1: { name: GAP, repeater: gap }\n  3: { name: SIMP, simplex: 146.550, width: 25 }\n${tones
    .map(
      (tone, index) => `  ${10 + index}: { name: T${index}, simplex: 147.540, width: 25, tone: "${tone}" }`,
    )
    .join('\n')}`;

test('every published tone and code is standard', async () => {
  const tones = [
    ...publishedTones.map(([tone]) => tone),
    ...dcsPairs.slice(0, 60).map(([code]) => `D${code}N`),
  ];
  expect(await foundBy('tone/not-standard', channels(tones))).toEqual([]);
});

test('a tone a few tenths beside a published one is found, and that one is suggested', async () => {
  for (const [tone] of publishedTones) {
    const beside = (Number(tone) + 0.3).toFixed(1);
    const found = (await findingsOf(channels([beside]))).filter(({ rule }) => rule === 'tone/not-standard');
    expect([beside, ...found.map(({ suggestion }) => suggestion)]).toEqual([beside, tone]);
  }
});

// Tones starred in published tables: two stand beside harmonics of 50 Hz mains, two beside those of 60 Hz.
test('of the starred tones, those beside the harmonics of the mains of the country are noted', async () => {
  const noted = async (country: string) =>
    (
      await foundBy(
        'tone/mains-harmonic',
        `plan: { title: Example, revision: 1, effective: 2026-12-01, review-by: 2027-12-01, timezone: Europe/London, rules: ${country}, coordinator: ada }\nrepeaters:\n  gap: { name: Gap, output: 146.940, offset: -0.6 }\n${channels(starredTones)}`,
      )
    ).map((line) => /(\d+\.\d) Hz stands/.exec(line)?.[1]);
  expect(await noted('us')).toEqual(['118.8', '179.9']);
  expect(await noted('gb')).toEqual(['100.0', '151.4']);
});

// TIA-603-D groups A, B and C: tones of one group are meant to be used beside each other.
test.each(['A', 'B', 'C'])('tones of group %s on one frequency are far enough apart', async (group) => {
  const tones = publishedTones.filter(([, , own]) => own === group).map(([tone]) => tone);
  expect(await foundBy('tone/neighbouring-tones', channels(tones))).toEqual([]);
});

test('a later tone beside its older neighbour on one frequency is not far enough', async () => {
  expect(await foundBy('tone/neighbouring-tones', channels(['159.8', '162.2']))).toHaveLength(1);
  expect(await foundBy('tone/neighbouring-tones', channels(['203.5', '206.5']))).toHaveLength(1);
});

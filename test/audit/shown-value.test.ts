import { describe, expect, test } from 'vitest';
import { readShown } from '../../src/audit/shown-value.ts';
import { faultPlan } from './fault-plan.ts';
import { planFrom, radioOf } from './worksheet-rows.ts';

const radio = radioOf(await planFrom(faultPlan), 'handheld');

describe('what displays show of one value is read as that value', () => {
  test.each([
    '146.94',
    '146.940',
    '146.940.00',
    '146.9400',
    '146940',
    '146 940',
    '146940000',
    '146,940',
    '146.94 MHz',
    '146940 kHz',
  ])('%s is 146.940 MHz', (text) => {
    expect(readShown('receive', text, radio)).toMatchObject({
      ok: true,
      values: { receive: { frequencyHz: 146_940_000 } },
    });
  });

  test.each([
    ['7185', 7_185_000],
    ['27.185', 27_185_000],
    ['1296.5', 1_296_500_000],
    ['462.5625', 462_562_500],
  ])('%s is a frequency in its own band', (text, hertz) => {
    expect(readShown('receive', text, radio)).toMatchObject({
      ok: true,
      values: { receive: { frequencyHz: hertz } },
    });
  });

  test.each(['', 'GAP', '146.94.', '1.2.3.4.5', '-146.94', '0', '1e8', '146.94 dB'])(
    '"%s" is no frequency',
    (text) => {
      expect(readShown('receive', text, radio).ok).toBe(false);
    },
  );

  test.each([
    ['+', 'plus'],
    ['plus', 'plus'],
    ['-', 'minus'],
    ['−', 'minus'],
    ["'-", 'minus'],
    ['MINUS', 'minus'],
    ['off', 'none'],
    ['simplex', 'none'],
  ])('the direction %s', (text, direction) => {
    expect(readShown('offset-direction', text, radio)).toEqual({ ok: true, values: { direction } });
  });

  test.each([
    ['0.6', { offsetHz: 600_000 }],
    ['0.600', { offsetHz: 600_000 }],
    ['600', { offsetHz: 600_000 }],
    ['600 kHz', { offsetHz: 600_000 }],
    ['-0.6', { offsetHz: 600_000, direction: 'minus' }],
    ['+5', { offsetHz: 5_000_000, direction: 'plus' }],
    ['5.00', { offsetHz: 5_000_000 }],
    ['none', { offsetHz: 0 }],
  ])('the offset %s', (text, values) => {
    expect(readShown('offset', text, radio)).toEqual({ ok: true, values });
  });

  test('a sign alone is not a size', () => {
    expect(readShown('offset', '-', radio)).toMatchObject({ ok: false });
  });

  test.each([
    ['100', '100'],
    ['100.0', '100'],
    ['100.0 Hz', '100'],
    ['CTCSS 100.0', '100'],
    ['88,5', '88.5'],
  ])('the tone %s', (text, hertz) => {
    expect(readShown('tone', text, radio)).toMatchObject({
      values: { tone: { tone: { kind: 'ctcss', tenthsHz: Number(hertz) * 10 }, senseShown: true } },
    });
  });

  test.each([
    ['D023N', false, true],
    ['d023i', true, true],
    ['DN023', false, true],
    ['023N', false, true],
    ['023', false, false],
    ['D023', false, false],
    ['DCS 023N', false, true],
  ])('the code %s', (text, inverted, senseShown) => {
    expect(readShown('tone', text, radio)).toMatchObject({
      values: { tone: { tone: { kind: 'dcs', code: '023', inverted }, senseShown } },
    });
  });

  test('a figure that could be a code or a tone cut short is not read, unless the kind of tone says which', () => {
    expect(readShown('tone', '131', radio)).toMatchObject({ ok: false });
    expect(readShown('tone', '131', radio, 'dcs')).toMatchObject({ ok: true });
  });

  test('wide and narrow are the widest and the narrowest the radio has', () => {
    expect(readShown('width', 'W', radio)).toEqual({ ok: true, values: { spacingHz: 25_000 } });
    expect(readShown('width', 'narrow', radio)).toEqual({ ok: true, values: { spacingHz: 12_500 } });
    expect(readShown('width', '12.5 kHz', radio)).toEqual({ ok: true, values: { spacingHz: 12_500 } });
  });

  test.each(['high', 'H', '5', '5 W', 'high 5 W', '5000 mW'])('the power %s', (text) => {
    expect(readShown('power', text, radio)).toEqual({
      ok: true,
      values: { power: { name: 'high', powerW: 5 } },
    });
  });

  test.each(['none', 'any', 'any (never transmit)', 'beliebig (nie senden)'])(
    'the power %s, as worksheets have it where nobody transmits, is no setting',
    (text) => {
      expect(readShown('power', text, radio)).toEqual({ ok: true, values: { power: 'none' } });
    },
  );

  test('a setting the radio has not is not read', () => {
    expect(readShown('power', '50 W', radio)).toMatchObject({ ok: false });
  });
});

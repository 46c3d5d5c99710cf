/** What a kind of radio can do on a channel, whoever holds it: its ranges, steps, widths, tones, modes and slots. */
import type { HertzSpan, Radio } from '../plan/model.ts';
import { formatFrequency, formatSpacing } from '../radio/format-quantity.ts';
import { formatTone, type Tone } from '../radio/tone.ts';
import type { ChannelParticulars } from './channel-particulars.ts';

export type MisfitCode =
  | 'memory'
  | 'receive-range'
  | 'receive-step'
  | 'mode' // it cannot hold the channel
  | 'transmit-range'
  | 'transmit-step'
  | 'tone'
  | 'width'; // it can listen, and not transmit as the plan has it

export interface Misfit {
  readonly code: MisfitCode;
  /** A clause after the radio's name: "has no slot 129". */
  readonly text: string;
}

export interface RadioFit {
  readonly holds: boolean;
  readonly transmits: boolean;
  readonly misfits: readonly Misfit[];
}

export function radioFit(radio: Radio, on: ChannelParticulars): RadioFit {
  const hasBuiltIn = on.builtIn.some((service) => radio.certified.includes(service));
  const holding: Misfit[] = [];
  const sending: Misfit[] = [];
  if (!radio.memories.some(({ from, to }) => from <= on.slot && on.slot <= to)) {
    holding.push({
      code: 'memory',
      text: `has no slot ${on.slot}; its slots are ${radio.memories.map(slots).join(', ')}`,
    });
  }
  if (!radio.modes.includes(on.mode))
    holding.push({
      code: 'mode',
      text: `has no ${on.mode === 'packet' ? 'packet' : on.mode.toUpperCase()} mode`,
    });
  if (!inside(on.receiveHz, radio.receives)) {
    holding.push({
      code: 'receive-range',
      text: `cannot receive ${formatFrequency(on.receiveHz)} MHz; it receives ${ranges(radio.receives)}`,
    });
  } else if (!hasBuiltIn && !onStep(on.receiveHz, radio.stepsHz)) {
    holding.push({ code: 'receive-step', text: offStep(on.receiveHz, radio) });
  }
  if (on.transmitHz !== undefined) {
    if (!inside(on.transmitHz, radio.transmits)) {
      sending.push({
        code: 'transmit-range',
        text: `cannot transmit on ${formatFrequency(on.transmitHz)} MHz; it transmits on ${ranges(radio.transmits) || 'nothing'}`,
      });
    } else if (!hasBuiltIn && !onStep(on.transmitHz, radio.stepsHz)) {
      sending.push({ code: 'transmit-step', text: offStep(on.transmitHz, radio) });
    }
    if (on.tone && !canSend(radio, on.tone))
      sending.push({ code: 'tone', text: `cannot send the tone ${formatTone(on.tone)}` });
    if (
      radio.widthsHz.length > 0 &&
      (on.mode === 'fm' || on.mode === 'packet') &&
      (on.spacingWritten || !hasBuiltIn) &&
      !radio.widthsHz.includes(on.spacingHz)
    ) {
      sending.push({
        code: 'width',
        text: `cannot be set to ${formatSpacing(on.spacingHz)}; it has ${radio.widthsHz.map(formatSpacing).join(', ')}`,
      });
    }
  }
  return {
    holds: holding.length === 0,
    transmits: holding.length === 0 && on.transmitHz !== undefined && sending.length === 0,
    misfits: [...holding, ...sending],
  };
}

/** Steps of the radio that reach a frequency. Radios count their steps from zero (common practice). */
export function stepsReaching(frequencyHz: number, stepsHz: readonly number[]): readonly number[] {
  return stepsHz.filter((step) => frequencyHz % step === 0);
}

function onStep(frequencyHz: number, stepsHz: readonly number[]): boolean {
  return stepsHz.length === 0 || stepsReaching(frequencyHz, stepsHz).length > 0;
}

function canSend(radio: Radio, tone: Tone): boolean {
  return radio.tones.some((known) =>
    typeof known === 'string' ? known === tone.kind : formatTone(known) === formatTone(tone),
  );
}

function inside(frequencyHz: number, spans: readonly HertzSpan[]): boolean {
  return spans.some(({ fromHz, toHz }) => fromHz <= frequencyHz && frequencyHz <= toHz);
}

function offStep(frequencyHz: number, radio: Radio): string {
  return `cannot be tuned to ${formatFrequency(frequencyHz)} MHz in steps of ${radio.stepsHz.map(formatSpacing).join(', ')}`;
}

function ranges(spans: readonly HertzSpan[]): string {
  return spans
    .map(({ fromHz, toHz }) => `${formatFrequency(fromHz)}-${formatFrequency(toHz)} MHz`)
    .join(', ');
}

function slots({ from, to }: { from: number; to: number }): string {
  return from === to ? String(from) : `${from}-${to}`;
}

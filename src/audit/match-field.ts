/** Whether what a radio shows is what a plan has, field by field; undefined where it was not read or does not matter. */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import { sameSignal, type Tone } from '../radio/tone.ts';
import type { ShownFrequency, ShownTone, ShownValues } from './shown-value.ts';

/** Fields that leave a channel as useful as the plan has it when the radio's menu does not ask for them. */
const onlyWhenAsked: ReadonlySet<EntryField> = new Set(['step', 'power', 'name', 'tone-kind']);

export function matchField(
  shown: ShownValues,
  entry: Entry,
  field: EntryField,
  radio: Radio,
): boolean | undefined {
  const asked = radio.entryOrder.includes(field);
  if (!asked && onlyWhenAsked.has(field)) return undefined;
  switch (field) {
    case 'receive':
      return shown.receive && sameFrequency(shown.receive, entry.receiveHz);
    case 'transmit':
      if (shown.transmit === undefined) return undefined;
      if (shown.transmit === 'none') return entry.transmitHz === undefined;
      return entry.transmitHz !== undefined && sameFrequency(shown.transmit, entry.transmitHz);
    case 'step':
      return shown.stepHz === undefined
        ? undefined
        : (shown.stepHz === 'none' ? undefined : shown.stepHz) === entry.stepHz;
    case 'mode':
      // A modem sends its tones through an FM voice radio, whose menu knows no mode of that name.
      return shown.mode && shown.mode === (entry.mode === 'packet' ? 'fm' : entry.mode);
    case 'offset-direction':
      return shown.direction && shown.direction === entry.direction;
    case 'offset':
      // A size that stays in the radio without a direction moves nothing.
      if (shown.offsetHz === undefined || (shown.direction === 'none' && entry.direction === 'none'))
        return undefined;
      return shown.offsetHz === entry.offsetHz;
    case 'tone-kind':
      return shown.toneKind && shown.toneKind === (entry.tone?.kind ?? 'none');
    case 'tone':
      return shown.tone && sameTone(shown.tone, entry.tone);
    case 'receive-tone':
      if (shown.receiveTone === undefined) return undefined;
      // A menu that never asks for it leaves the squelch open to all, as the worksheet does.
      return (!asked && shown.receiveTone === 'none') || sameTone(shown.receiveTone, entry.receiveTone);
    case 'width':
      return shown.spacingHz === undefined ? undefined : shown.spacingHz === entry.spacingHz;
    case 'power':
      if (shown.power === undefined || entry.power === undefined) return undefined;
      return shown.power !== 'none' && shown.power.name === entry.power.name;
    case 'name':
      // Whoever reads a cut name may write the whole one.
      return shown.name === undefined
        ? undefined
        : [entry.shown, entry.name].some((name) => folded(name) === folded(shown.name ?? ''));
  }
}

/** A display of three or four decimals cuts the finer figures of 462.5625 MHz, or rounds them. */
export function sameFrequency(shown: ShownFrequency, frequencyHz: number): boolean {
  if (shown.frequencyHz === frequencyHz) return true;
  if (shown.resolutionHz > 1000) return false;
  const cut = Math.floor(frequencyHz / shown.resolutionHz) * shown.resolutionHz;
  const rounded = Math.round(frequencyHz / shown.resolutionHz) * shown.resolutionHz;
  return shown.frequencyHz === cut || shown.frequencyHz === rounded;
}

export function sameTone(shown: ShownTone | 'none', tone: Tone | undefined): boolean {
  if (shown === 'none' || tone === undefined) return shown === 'none' && tone === undefined;
  if (sameSignal(shown.tone, tone)) return true;
  return (
    !shown.senseShown && shown.tone.kind === 'dcs' && tone.kind === 'dcs' && shown.tone.code === tone.code
  );
}

function folded(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toUpperCase();
}

/** What a wrong entry does on the air, and whether anybody would hear it. Common practice of working with FM radios. */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField } from '../plan/model.ts';
import type { ShownValues } from './shown-value.ts';

export interface Effect {
  /** `heard`: somebody notices as soon as the channel is used. `unheard`: nothing in the radio tells. `harmless`: nothing goes wrong on the air. */
  readonly noticed: 'heard' | 'unheard' | 'harmless';
  readonly text: string;
}

export function faultEffect(field: EntryField, shown: ShownValues, entry: Entry): Effect {
  const silentToOthers: Effect = {
    noticed: 'unheard',
    text: 'nobody hears this radio, and its user, who hears everybody, does not notice',
  };
  const listenOnly = entry.senders.length === 0;
  switch (field) {
    case 'receive':
      return {
        noticed: 'unheard',
        text: 'the channel is silent, and sounds like a channel where nobody speaks',
      };
    case 'transmit':
    case 'offset-direction':
    case 'offset':
      if (listenOnly)
        return {
          noticed: 'unheard',
          text: 'one press of the key would transmit where nobody with this radio may',
        };
      return silentToOthers;
    case 'tone-kind':
    case 'tone':
      if (listenOnly)
        return {
          noticed: 'unheard',
          text: 'with a tone it looks like a channel to call on; nobody with this radio may',
        };
      if (entry.tone === undefined)
        return {
          noticed: 'harmless',
          text: 'others hear it as before; the tone opens nothing it should not',
        };
      return entry.direction === 'none'
        ? {
            noticed: 'unheard',
            text: 'radios that wait for the tone stay silent, and its user does not notice',
          }
        : { noticed: 'heard', text: 'the repeater does not answer, which shows at the first call' };
    case 'receive-tone':
      return shown.receiveTone === 'none'
        ? { noticed: 'heard', text: 'everything on the frequency is heard, other groups and noise included' }
        : { noticed: 'unheard', text: 'the squelch stays shut on calls, and the channel sounds quiet' };
    case 'width':
      return shown.spacingHz !== undefined && shown.spacingHz < entry.spacingHz
        ? { noticed: 'heard', text: 'its voice is faint, and strong voices reach it distorted' }
        : {
            noticed: 'heard',
            text: 'its voice is distorted at the others, and spills over the next channel',
          };
    case 'power':
      return shown.power !== undefined &&
        shown.power !== 'none' &&
        entry.power !== undefined &&
        shown.power.powerW > entry.power.powerW
        ? { noticed: 'unheard', text: 'it may pass the lawful power, and drains the battery' }
        : { noticed: 'heard', text: 'it is weak at a distance where the plan counts on it' };
    case 'mode':
      return { noticed: 'heard', text: 'voices are noise, both ways' };
    case 'step':
      return { noticed: 'harmless', text: 'it shows only when somebody turns the dial' };
    case 'name':
      return {
        noticed: 'harmless',
        text: 'nothing is wrong on the air; a person may take the wrong channel',
      };
  }
}

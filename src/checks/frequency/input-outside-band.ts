import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency, formatOffset } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { bandOf } from '../../regulations/repeater-bands.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { usualOffset } from '../../regulations/usual-offset.ts';
import { rule } from '../rule.ts';

/** An offset with the wrong sign or size near a band edge sends every member's call outside the band. */
export const frequencyInputOutsideBand = rule({
  id: 'frequency/input-outside-band',
  severity: 'error',
  basis: 'law',
  looksFor: 'A repeater whose input, on which members transmit, lies outside the band of its output.',
  why: 'The input is what members send on. Outside the band nobody is licensed to send, and no repeater listens there.',
  mend: 'Correct the offset or the input; the usual offset of the band is in the message where one is known.',
  sources: [{ document: '47 CFR part 97', section: '97.301' }],
  bad: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 224.860
    offset: 1.6 # finding
    tone: 100.0`,
  good: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 224.860
    offset: -1.6
    tone: 100.0`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      if (signal.part !== 'input' || signal.overshadowed) continue;
      const { repeater, services, answer, at } = signal;
      const { outputHz, inputHz } = repeater;
      if (answer.may || answer.why !== 'outside') continue;
      if (serviceOf(law, outputHz, outputHz).length === 0) continue;
      const usual = usualOffset(law, outputHz, repeater.service ?? services[0]);
      if (usual?.fixed) continue;
      const band = bandOf(law, services, outputHz);
      const offsets = (usual?.usualHz ?? []).filter(
        (hz) => serviceOf(law, outputHz + hz, outputHz + hz).length > 0,
      );
      const [likely] = offsets;
      const message = `Input is ${formatFrequency(inputHz)} MHz, outside ${band.text}`;
      yield {
        at,
        message:
          likely === undefined
            ? `${message}.`
            : `${message}; with offset ${formatOffset(likely)} it would be ${formatFrequency(outputHz + likely)} MHz.`,
        ...(likely !== undefined && {
          suggestion:
            repeater.writtenAs === 'offset' ? formatOffset(likely) : formatFrequency(outputHz + likely),
        }),
        ...(band.row && { source: sourceOf(law, band.row) }),
      };
    }
  },
});

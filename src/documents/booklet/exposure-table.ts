/** The distance to keep from each antenna, and for radios at the body what governs instead. */
import type { Consequences } from '../../consequences/consequences.ts';
import { exposuresOf } from '../../consequences/exposures.ts';
import type { Plan } from '../../plan/model.ts';
import { formatGain, formatPower } from '../../radio/format-quantity.ts';
import type { Law } from '../../regulations/law.ts';
import { megahertz } from '../figures.ts';
import type { Said, Words } from '../words.ts';

export interface ExposureTable {
  readonly rows: readonly {
    readonly name: string;
    readonly frequency: string;
    readonly power: string;
    readonly gain: string;
    /** Metres, rounded up to a tenth. */
    readonly forPublic: string;
    readonly trained: string;
  }[];
  /** Sentences that belong beside the figures, each once. */
  readonly cautions: readonly Said[];
}

export function exposureTable(plan: Plan, consequences: Consequences, law: Law, words: Words): ExposureTable {
  const all = exposuresOf(plan, consequences, law);
  const rows = all.flatMap(({ name, frequencyHz, powerW, gainDbi, answer }) =>
    answer.kind === 'distance'
      ? [
          {
            name,
            frequency: megahertz(frequencyHz),
            power: formatPower(powerW),
            gain: formatGain(gainDbi),
            forPublic: metres(answer.public.keepM),
            trained: metres(answer.occupational.keepM),
          },
        ]
      : [],
  );
  const atBody = all.filter(({ answer }) => answer.kind === 'at the body').map(({ name }) => name);
  const cautions = all.flatMap(({ answer, frequencyHz }): Said[] => {
    if (answer.kind === 'no limit') return [words.exposure.noLimit(frequencyHz / 1e6)];
    if (answer.kind === 'at the body') {
      const { text, language } = words.exposure.atTheBody;
      return [{ text: `${[...new Set(atBody)].join(', ')}: ${text}`, language }];
    }
    const { document, section } = answer.public.limit.source;
    const { text, language } = words.exposure.estimate;
    const limits = words.exposure.limits(
      law.country.exposure,
      [document, section].filter(Boolean).join(', '),
    );
    return [{ text: `${text} (${limits})`, language }];
  });
  return { rows, cautions: [...new Map(cautions.map((each) => [each.text, each])).values()] };
}

function metres(value: number): string {
  return (Math.ceil(value * 10) / 10).toFixed(1);
}

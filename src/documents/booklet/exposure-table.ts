/** The distance to keep from each antenna, and for radios at the body what governs instead. */
import type { Consequences } from '../../consequences/consequences.ts';
import { exposuresOf } from '../../consequences/exposures.ts';
import type { Plan } from '../../plan/model.ts';
import { formatGain, formatPower } from '../../radio/format-quantity.ts';
import type { Law } from '../../regulations/law.ts';
import { megahertz } from '../figures.ts';

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
  readonly cautions: readonly string[];
}

export function exposureTable(plan: Plan, consequences: Consequences, law: Law): ExposureTable {
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
  const cautions = all.flatMap(({ answer }) => {
    if (answer.kind === 'no limit') return [answer.reason];
    if (answer.kind === 'at the body') return [`${[...new Set(atBody)].join(', ')}: ${answer.caution}`];
    const { document, section } = answer.public.limit.source;
    return [`${answer.caution} (${[document, section].filter(Boolean).join(', ')})`];
  });
  return { rows, cautions: [...new Set(cautions)] };
}

function metres(value: number): string {
  return (Math.ceil(value * 10) / 10).toFixed(1);
}

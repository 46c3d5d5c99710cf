/** `readback exposure`: the distance to keep from each transmitter of a plan. */
import { createColors } from 'picocolors';
import { type ExposureRow, exposuresOf } from '../consequences/exposures.ts';
import { plainWidth } from '../findings/display-width.ts';
import { sourceLine } from '../findings/print-findings.ts';
import { wrapText } from '../findings/wrap-text.ts';
import { formatFrequency, formatPower } from '../radio/format-quantity.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { columnsOf, hasColour } from './terminal.ts';

export interface ExposureOptions {
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function exposure(file: string, options: ExposureOptions): Promise<ExitStatus> {
  const { plan, consequences, law } = await loadSubject(file, options);
  const rows = exposuresOf(plan, consequences, law);
  process.stdout.write(
    options.json
      ? `${JSON.stringify({ plan: file, revision: plan.revision, transmitters: rows.map(rowJson) }, null, 2)}\n`
      : table(rows, options),
  );
  return 0;
}

function table(rows: readonly ExposureRow[], options: ExposureOptions): string {
  const { bold, dim } = createColors(hasColour(process.stdout, options));
  const apart = rows.filter((row) => row.answer.kind === 'distance');
  const carried = rows.filter((row) => row.answer.kind === 'at the body');
  // The figures take 43 columns; a name that finds no room beside them is cut.
  const columns = columnsOf(process.stdout);
  const longest = Math.max(11, Math.min(columns - 43, 32, Math.max(...apart.map(({ name }) => name.length))));
  const row = (name: string, figures: readonly [string, string, string, string, string]) => {
    const shown = name.length > longest ? `${name.slice(0, longest - 1)}…` : name;
    const [frequency, power, gain, everyone, trained] = figures;
    return `${shown.padEnd(longest)} ${frequency.padStart(9)} ${power.padStart(7)} ${gain.padStart(8)} ${everyone.padStart(7)}${trained.padStart(8)}`;
  };
  const head = bold(
    `${'Keep away, m'.padStart(longest + 43)}\n${row('Transmitter', ['MHz', 'Power', 'Gain', 'public', 'trained'])}`,
  );
  const metres = (m: number) => (Math.ceil(m * 10) / 10).toFixed(1);
  const lines = apart.flatMap(({ name, frequencyHz, powerW, gainDbi, answer }) =>
    answer.kind === 'distance'
      ? [
          row(name, [
            formatFrequency(frequencyHz),
            formatPower(powerW),
            `${gainDbi.toFixed(1)} dBi`,
            metres(answer.public.keepM),
            metres(answer.occupational.keepM),
          ]),
        ]
      : [],
  );
  const say = (text: string) => wrapText(text, columns, plainWidth).join('\n');
  const cautions: string[] = [];
  for (const { answer } of [...apart.slice(0, 1), ...carried.slice(0, 1)]) {
    if (answer.kind === 'distance') {
      const sources = sourceLine(answer.public.limit.source);
      cautions.push(`${answer.caution} Reckoned with the key down all the time. Limits: ${sources}.`);
    } else if (answer.kind === 'at the body')
      cautions.push(`${[...new Set(carried.map(({ name }) => name))].join(', ')}. ${answer.caution}`);
  }
  const blocks = [
    apart.length > 0 ? [head, ...lines].join('\n') : '',
    ...cautions.map(say),
    dim(say('Local rules and licensed practice come first.')),
  ];
  return `${blocks.filter(Boolean).join('\n\n')}\n`;
}

function rowJson({
  kind,
  id,
  name,
  slot,
  frequencyHz,
  powerW,
  gainDbi,
  carried,
  answer,
}: ExposureRow): object {
  const head = {
    kind,
    id,
    name,
    slot,
    frequencyHz,
    powerW,
    gainDbi,
    carried,
    caution: answer.kind === 'no limit' ? answer.reason : answer.caution,
  };
  if (answer.kind !== 'distance') return { ...head, distance: null };
  const part = (keep: typeof answer.public) => ({
    keepM: Number(keep.keepM.toFixed(2)),
    limitWm2: keep.limit.densityWm2,
    averagedOverS: keep.limit.averagedOverS,
    source: keep.limit.source,
  });
  return {
    ...head,
    distance: {
      averagePowerW: answer.averagePowerW,
      public: part(answer.public),
      occupational: part(answer.occupational),
    },
  };
}

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
  const longest = Math.min(32, Math.max(8, ...rows.map(({ name }) => name.length)));
  const head = bold(
    `${'Transmitter'.padEnd(longest)}  ${'MHz'.padStart(8)} ${'Power'.padStart(7)} ${'Gain'.padStart(9)}  Keep away, m: public  trained`,
  );
  const lines = apart.flatMap(({ name, frequencyHz, powerW, gainDbi, answer }) => {
    if (answer.kind !== 'distance') return [];
    const [everyone, trained] = [answer.public.keepM, answer.occupational.keepM].map((m) =>
      (Math.ceil(m * 10) / 10).toFixed(1),
    );
    const shown = name.length > longest ? `${name.slice(0, longest - 1)}…` : name;
    return [
      `${shown.padEnd(longest)}  ${formatFrequency(frequencyHz).padStart(8)} ${formatPower(powerW).padStart(7)} ${`${gainDbi.toFixed(1)} dBi`.padStart(9)}  ${(everyone ?? '').padStart(20)}  ${(trained ?? '').padStart(7)}`,
    ];
  });
  const say = (text: string) => wrapText(text, columnsOf(process.stdout), plainWidth).join('\n');
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

/** The table of `readback paths --trials`: each trial beside its prediction, and what they say of each kind of radio. */
import { createColors } from 'picocolors';
import type { TrialBesidePrediction, TrialErrors } from '../consequences/trial-errors.ts';
import type { Plan } from '../plan/model.ts';
import type { TrialFit } from '../reach/trial-fit.ts';
import { endName, marginText, missingRemedy, signed } from './paths-text.ts';
import { lines } from './print-lines.ts';
import { columnsOf, displayWidth, hasColour, type TerminalOptions } from './terminal.ts';

const offer =
  'A correction is offered, never applied: it may stand for an antenna gain, a height or a noise level that the plan has wrong. Change that in the plan if the cause is known.';

/** @param missing sentences on what could not be predicted */
export async function pathsTrialsText(
  plan: Plan,
  { beside, radios, withoutPrediction }: TrialErrors,
  missing: readonly string[],
  options: TerminalOptions,
): Promise<string> {
  const { bold, dim } = createColors(hasColour(process.stdout, options));
  const columns = columnsOf(process.stdout);
  const heads = beside.map(({ trial, radio, path }) => {
    const from = plan.places.get(trial.from)?.name ?? plan.members.get(trial.from)?.name ?? trial.from;
    return `${trial.date}  ${from} to ${endName(plan, path.to).split(',')[0]}, ${radio}`;
  });
  const widthOf = await displayWidth([...heads, ...beside.map(({ trial }) => trial.report ?? '')]);
  const print = lines(columns, widthOf);
  const tried = beside.map(({ trial, path }, index) => {
    const predicted = `    ${predictedText(path)} heard `;
    const report = trial.report === undefined ? '' : ` (${trial.report})`;
    const fits = widthOf(predicted + trial.heard + report) <= columns;
    return [
      print.say(heads[index] ?? '', 2, 4),
      fits
        ? `${predicted}${bold(trial.heard)}${dim(report)}`
        : print.say(`${predicted.trim()} ${trial.heard}${report}`, 4, 6),
    ].join('\n');
  });
  const blocks = [[bold('Trials beside their predictions'), ...tried].join('\n')];
  if (radios.length > 0) {
    const fits = radios.map(({ radio, fit }) => print.say(`${radio}: ${fitText(fit)}`, 2, 4));
    blocks.push([bold('By kind of radio'), ...fits].join('\n'));
  }
  if (withoutPrediction.length > 0)
    blocks.push(
      print.say(
        `${withoutPrediction.length} without a prediction: they name no radio, channel or known place.`,
      ),
    );
  if (missing.length > 0) blocks.push(print.say([...missing, missingRemedy].join(' ')));
  if (radios.length > 0) blocks.push(dim(print.say(offer)));
  return `${blocks.join('\n\n')}\n`;
}

function predictedText({ prediction, profile }: TrialBesidePrediction['path']): string {
  if (prediction.ok)
    return `predicted ${marginText(prediction.worse)} ${prediction.worse.verdict.padEnd(8)} `;
  return profile === undefined
    ? 'predicted: not possible, no elevation data;'
    : `predicted: not possible. ${prediction.reason}`;
}

function fitText(fit: TrialFit): string {
  const spread = fit.spreadFitted ? `spread ${fit.spreadDb.toFixed(1)} dB` : 'too few for a spread';
  const [mean, offered] = [Math.round(fit.meanErrorDb), Math.round(fit.offeredDb)];
  // The mean is the smallest of the shifts that explain the trials about as well, so what is offered may exceed it a little.
  const why =
    mean === offered
      ? ''
      : Math.abs(offered) < Math.abs(mean)
        ? ' (the mean drawn towards none, because few trials stand behind it)'
        : ' (by these trials about as likely as the mean)';
  return `${fit.trials} ${fit.trials === 1 ? 'trial' : 'trials'}, mean error ${signed(fit.meanErrorDb)} dB, ${spread}; offered correction ${signed(fit.offeredDb)} dB${why}`;
}

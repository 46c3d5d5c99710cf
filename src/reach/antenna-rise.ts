/** How much higher an antenna must be for a path to close, when nobody can walk. */
import { type LinkBudget, type LinkBudgetInput, linkBudget } from './link-budget.ts';

/** Heights are tried at this step, m: finer than anybody sets up a mast. */
const stepM = 0.5;

export interface AntennaRise {
  readonly heightM: number;
  readonly budget: LinkBudget;
}

/**
 * The lowest antenna height at one end, up to `mostM`, at which the path has the chance wanted; `undefined` if none has, or the ground is
 * unknown. Heights are tried one by one, since the loss does not fall strictly as an antenna rises: raising it also moves the
 * smooth surface that the method fits.
 */
export function antennaRise(
  input: LinkBudgetInput,
  end: 'transmitter' | 'receiver',
  wanted: number,
  mostM: number,
): AntennaRise | undefined {
  const antenna = input[end].antenna;
  for (let heightM = antenna.heightM; heightM <= mostM + 1e-9; heightM += stepM) {
    const raised = { ...antenna, heightM };
    const budget = linkBudget(
      end === 'transmitter'
        ? { ...input, transmitter: { ...input.transmitter, antenna: raised } }
        : { ...input, receiver: { ...input.receiver, antenna: raised } },
    );
    if (!budget.ok) return undefined;
    if (budget.probability >= wanted) return { heightM, budget };
  }
  return undefined;
}

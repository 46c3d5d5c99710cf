import type { PlannedSignal } from '../consequences/planned-signals.ts';
import type { PlanPath } from '../findings/finding.ts';

/** Where the width of a signal is written, or where its frequency is if it was left to the rules. */
export function writtenWidthPath(signal: PlannedSignal): PlanPath {
  if (signal.part === 'output' || signal.part === 'input') {
    const { id, widthHz } = signal.repeater;
    return widthHz === undefined ? signal.at : ['repeaters', id, 'width'];
  }
  const { slot, widthHz } = signal.on.channel;
  return widthHz === undefined ? signal.at : ['channels', slot, 'width'];
}

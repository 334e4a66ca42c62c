/**
 * What tension buys: how far the drive wheel is from slipping, over the cutting power, at three tensions.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { rimFriction } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatRange } from '../../units/format-quantity.ts';
import { DriveWheel } from './grip/DriveWheel.tsx';
import { gripLayout } from './grip/layout.ts';
import { MarginPlot } from './grip/MarginPlot.tsx';
import { whatTensionBuys } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(whatTensionBuys);

function finding(state: State): string {
  const { power, slipPower } = state.values;
  const [cut, slips] = [say(state, 'power', 2), say(state, 'slipPower', 2)];
  if (power === 0)
    return `With no power in the cut both strands pull alike; at ${say(state, 'stress')} the band would slip at ${slips}.`;
  if (power > slipPower)
    return `At ${say(state, 'stress')} the band slips: the cut takes ${cut}, the rim carries ${slips}.`;
  return `At ${say(state, 'stress')} the rim carries ${slips} before the band slips; the cut takes ${cut}, ${say(state, 'powerShare', 2)} of that.`;
}

function description(state: State): string {
  return `The slip margin falls as the cutting power rises. At ${say(state, 'power', 2)} and ${say(state, 'stress')} it is ${say(state, 'margin', 2)}; the tight strand pulls with ${say(state, 'tight')}, the slack one with ${say(state, 'slack')}. The band slips at ${say(state, 'slipPower', 2)}; at half of the tension at ${say(state, 'halfSlipPower', 2)}, at a quarter at ${say(state, 'quarterSlipPower', 2)}.`;
}

function notes(state: State): readonly string[] {
  return [
    'hatched, below a margin of 1: the band slips',
    `the mill at Ottersleigh, band at ${say(state, 'speed')}, half of the rim wrapped`,
    `friction on the rim: usually ${formatRange(rimFriction.low, rimFriction.high, 'ratio', state.system)} (common practice, no source); less where it is wet or pitchy`,
  ];
}

function Drawing(state: State) {
  const layout = gripLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <MarginPlot state={state} layout={layout} />
      <DriveWheel state={state} layout={layout} />
    </Sheet>
  );
}

/** The second figure of the lesson `what-tension-buys`. */
export const figure: Figure = { finding, description, notes, Drawing };

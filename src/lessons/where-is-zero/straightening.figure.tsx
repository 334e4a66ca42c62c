/**
 * A band leaving its coil set as the load rises: from the side with the dial on it, what the dial has traveled and why,
 * and the same over torque.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { whereIsZero } from './model.ts';
import type { Figure, State } from './state.ts';
import { BandFromSide } from './toe/BandFromSide.tsx';
import { exaggeration, toeLayout } from './toe/layout.ts';
import { atRest } from './toe/rest.worked.ts';
import { TravelPlot } from './toe/TravelPlot.tsx';
import { TravelRows } from './toe/TravelRows.tsx';

const say = teller(whereIsZero);

function finding(state: State): string {
  const { dialFromSlack, stress } = state.values;
  const [load, dial, stretch] = [
    say(state, 'load'),
    say(state, 'dialFromSlack'),
    say(state, 'stretch'),
  ];
  if (stress === 0) return `At ${load} the band is still slack: nothing has moved yet.`;
  if (dialFromSlack < 0)
    return `At ${load} the dial has gone backwards, to ${dial}, although the band has stretched ${stretch}.`;
  return `At ${load} the dial has moved ${dial}, but the band has stretched ${stretch}.`;
}

function description(state: State): string {
  const side = state.values.side === 'hollow' ? 'hollow' : 'outer';
  return `A band from the side with a bar on the ${side} side of its curl. Since the band was slack, straightening has moved the dial by ${say(state, 'straightened')} and stretch by ${say(state, 'stretch')}. A plot below shows both over torque.`;
}

function notes({ narrow, system }: State): readonly string[] {
  const times = exaggeration(toeLayout(narrow), atRest.gaugeLength);
  const said = (value: number) => formatQuantity(value, 'ratio', system, { digits: 2 });
  return [
    `movements drawn × ${said(times)}`,
    `invented band: each ${formatQuantity(atRest.dyingStress, 'stress', system, { digits: 2 })} leaves a third of the curl`,
  ];
}

function Drawing(state: State) {
  return (
    <Sheet idPrefix={state.idPrefix} size={toeLayout(state.narrow)}>
      <BandFromSide state={state} />
      <TravelRows state={state} />
      <TravelPlot state={state} />
    </Sheet>
  );
}

/** The figure of the band that straightens. */
export const figure: Figure = { finding, description, notes, Drawing };

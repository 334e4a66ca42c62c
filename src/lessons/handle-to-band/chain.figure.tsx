/**
 * The whole chain from the handle to the steel on one invented mill, which the reader drives by turning the handle;
 * the list of its stages; the ribbon of the work.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import { Pull } from '../../figures/mill/Callouts.tsx';
import { EndHandle, EndHandleWords } from '../../figures/mill/EndHandle.tsx';
import { Gauge } from '../../figures/mill/Gauge.tsx';
import { Loop } from '../../figures/mill/Loop.tsx';
import { Tensioner } from '../../figures/mill/Tensioner.tsx';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatRange } from '../../units/format-quantity.ts';
import { handleToBand } from './model.ts';
import { percentText } from './ribbon-parts.ts';
import { MeasuredWords, StageList, Stages } from './StageList.tsx';
import type { Figure, State } from './state.ts';
import { PlateAtRest, Travel } from './Travel.tsx';
import { type TurnedMill, turnedMill, turnLayout } from './turn-layout.ts';
import { WorkRibbon } from './WorkRibbon.tsx';

const say = teller(handleToBand);

function finding(state: State): string {
  if (state.values.turns === 0)
    return `No turn yet: the handle takes ${say(state, 'torque')}, its no-load torque. The band carries nothing.`;
  if (state.values.stress > workingStress.high)
    return `${say(state, 'turns')} put ${say(state, 'stress')} into the steel, more than small mills use.`;
  const share = percentText(state.values.bandShare);
  return `${say(state, 'turns')} put ${say(state, 'stress')} into the steel, and ${share} of your work into the band.`;
}

function description(state: State): string {
  return `A band runs round two wheels on a beam. A handle turned with ${say(state, 'torque')} draws the right wheel out by a screw: thrust ${say(state, 'thrust')}, force on the wheel ${say(state, 'wheelForce')}, in each strand ${say(state, 'strandForce')}, stress ${say(state, 'stress')}, on the dial ${say(state, 'stretch')}. Torque and dial can be measured, the rest only calculated. The wheel comes out by ${say(state, 'wheelTravel')}, the frame gives ${say(state, 'frameTravel')}. Of your work, ${say(state, 'work')}, the band keeps ${say(state, 'bandWork')} and the frame ${say(state, 'frameWork')}. The rest turns to heat: ${say(state, 'threadWork')} in the thread, ${say(state, 'collarWork')} in the bearing, ${say(state, 'dragWork')} from the no-load torque.`;
}

function notes({ narrow, system }: State): readonly string[] {
  const { times } = turnLayout(narrow).mill;
  const inUse = formatRange(workingStress.low, workingStress.high, 'stress', system);
  return [
    `movements drawn × ${times}, all the frame’s bending at its end plate`,
    'loop to scale; screw, handle and dial larger',
    `upper bar: your work; lower bar: in percent`,
    'turns and work counted from no tension, slack out',
    `in use on small mills: ${inUse} (common practice, no source)`,
  ];
}

/** The mill as it stands, and the handle that turns it. */
function Mill({ state, turned }: { readonly state: State; readonly turned: TurnedMill }) {
  const { values, idPrefix, system } = state;
  const { mill, wheel } = turned;
  return (
    <g>
      <Loop layout={mill} wheel={wheel} />
      <Tensioner layout={mill} id={`${idPrefix}-plate`} wheel={wheel} turns={values.turns} />
      <Gauge layout={mill} system={system} reading={values.stretch} />
      <Pull layout={mill} wheel={wheel} strandForce={values.strandForce} />
      <Travel state={state} turned={turned} />
      <Stages state={state} turned={turned} />
      <EndHandle
        model={handleToBand}
        state={state}
        input="turns"
        perTurn={1}
        layout={mill}
        turns={values.turns}
        torque={values.torque}
      />
    </g>
  );
}

function Drawing(state: State) {
  const layout = turnLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <PlateAtRest mill={layout.mill} />
      <Mill state={state} turned={turnedMill(state, layout)} />
      {state.narrow ? (
        <StageList state={state} />
      ) : (
        <g>
          <MeasuredWords state={state} />
          <EndHandleWords {...layout.mill} />
        </g>
      )}
      <WorkRibbon state={state} place={layout.ribbon} />
    </Sheet>
  );
}

/** The figure of the lesson `handle-to-band`. */
export const figure: Figure = { finding, description, notes, Drawing };

/**
 * Two mills side by side whose nuts are turned by the same amount: where the travel goes, and how much stress it adds.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { workingStress } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { CountingMill } from './mill.ts';
import { MILLS } from './mills.worked.ts';
import { countingTurns } from './model.ts';
import { pairLayout } from './pair/layout.ts';
import { MillWithBar, TIMES } from './pair/MillWithBar.tsx';
import { softNut, stiffNut } from './pair/nut-values.ts';
import { StressScale } from './pair/StressScale.tsx';
import { TurnDial } from './pair/TurnDial.tsx';
import type { Figure, State } from './state.ts';

const say = teller(countingTurns);

function finding(state: State): string {
  const { turnsBoth, stressStiff, stressSoft } = state.values;
  if (turnsBoth === 0) return 'Both nuts just touch: nothing has moved and nothing pulls yet.';
  const turns = `${say(state, 'turnsBoth')} of both nuts`;
  if (stressStiff === 0 && stressSoft === 0)
    return `${turns} only took up slack: neither band is tight yet.`;
  const far = stressStiff > workingStress.high ? ' (more than small mills use)' : '';
  if (stressStiff === 0)
    return `${turns} only took up slack at Ottersleigh. Yarrock’s longer lead has added ${say(state, 'stressSoft')}.`;
  return `${turns} added ${say(state, 'stressStiff')} at Ottersleigh${far}, but only ${say(state, 'stressSoft')} at Yarrock.`;
}

function description(state: State): string {
  return `Two mills. At Ottersleigh the nut bears straight on the frame: of ${say(state, 'travelStiff', 3)} of travel the slack takes ${say(state, 'slackStiff', 3)}, the band ${say(state, 'bandStiff', 3)} and the frame ${say(state, 'frameStiff', 3)}. At Yarrock a long soft spring is between nut and frame: of ${say(state, 'travelSoft', 3)} the slack takes ${say(state, 'slackSoft', 3)}, the band ${say(state, 'bandSoft', 3)}, the frame ${say(state, 'frameSoft', 3)} and the spring ${say(state, 'springSoft', 3)}. Below, both stresses on one scale: ${say(state, 'stressStiff')} and ${say(state, 'stressSoft')}.`;
}

function notes({ narrow, system }: State): readonly string[] {
  const apart = (mill: CountingMill) => formatQuantity(mill.centreDistance, 'longLength', system);
  const { stiffFrame, softSpring } = MILLS;
  const axles = `axles ${apart(stiffFrame)} apart at Ottersleigh, ${apart(softSpring)} at Yarrock`;
  return [
    ...(narrow ? [axles] : []),
    `both mills to one scale (Yarrock is a large mill); how far band and frame give is drawn × ${TIMES}`,
    'dashed: before the pull',
    'both bars of travel to one scale; percent of each nut’s travel',
  ];
}

function Drawing(state: State) {
  const layout = pairLayout(state.narrow);
  const common = { state, perTravel: layout.perTravel };
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <MillWithBar
        {...common}
        nut={stiffNut(state)}
        layout={layout.stiff}
        between="nut on the frame"
      />
      <MillWithBar
        {...common}
        nut={softNut(state)}
        layout={layout.soft}
        between="soft spring between"
      />
      <TurnDial state={state} layout={layout} />
      <StressScale state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `counting-turns`. */
export const figure: Figure = { finding, description, notes, Drawing };

/**
 * The stiff spring: a strip pulled between two clamps, above the stress-strain line that it walks along.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import { askedInputs } from './asked-inputs.ts';
import { STRIP, stiffSpring } from './model.ts';
import { reaches, startPlot } from './plot-frame.ts';
import { StressStrainPlot } from './StressStrainPlot.tsx';
import { exaggeration, StripUnderPull } from './StripUnderPull.tsx';
import type { Figure, State } from './state.ts';
import { stripLayout } from './strip-layout.ts';
import { WorkingRange } from './WorkingRange.tsx';

const say = teller(stiffSpring);

function words(state: State) {
  return {
    stretch: say(state, 'stretch'),
    gauge: say(state, 'gaugeLength'),
    stress: say(state, 'stress'),
    share: say(state, 'shareOfLimit', 2),
    left: say(state, 'leftStretch'),
    force: say(state, 'force'),
  };
}

function finding(state: State): string {
  const { stretch, gauge, stress, share, left } = words(state);
  const yields = state.values.leftStretch > 0;
  const isFree = state.values.released === 'letGo';
  if (state.values.stretch === 0) return 'At rest: no stretch, no stress.';
  if (yields && isFree) return `Let go from ${stretch}, the strip stays ${left} longer for good.`;
  if (isFree) return `Let go from ${stretch}, the strip comes all the way back.`;
  if (yields)
    return `Stretched ${stretch} over ${gauge}, the steel has yielded: ${left} of that will stay.`;
  return `Stretched ${stretch} over ${gauge}, the steel carries ${stress}: ${share} of its elastic limit.`;
}

function description(state: State): string {
  const { stretch, gauge, stress, force, left } = words(state);
  if (state.values.released === 'letGo')
    return `A strip of band steel between two clamps, ${gauge} apart, let go after it was stretched by ${stretch}: no pull, and ${left} of stretch left; below it the line of stress against strain, with the way back down to no stress.`;
  return `A strip of band steel between two clamps, ${gauge} apart, stretched by ${stretch} with a pull of ${force}; below it the line of stress against strain, with the strip’s place on it at ${stress}.`;
}

function notes({ system, narrow, guess }: State): readonly string[] {
  const times = exaggeration(stripLayout(narrow));
  const askedGauge = formatQuantity(askedInputs(system).gaugeLength, 'length', system);
  const range = formatRange(workingStress.low, workingStress.high, 'stress', system);
  const size = [STRIP.width, STRIP.thickness].map((side) =>
    formatQuantity(side, 'thickness', system),
  );
  return [
    `stretch drawn × ${formatQuantity(times, 'ratio', system, { digits: 2 })}`,
    `strip ${size.join(' by ')}, its width drawn larger`,
    `shaded: in use on small mills, ${range} (common practice, no source)`,
    ...(guess === undefined ? [] : [`guess and truth: for a gauge length of ${askedGauge}`]),
  ];
}

function Drawing(state: State) {
  const layout = stripLayout(state.narrow);
  const isPulled = state.values.released === 'held' && state.values.stress > 0;
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <StripUnderPull state={state} layout={layout} />
      <StressStrainPlot
        state={state}
        layout={layout}
        isReadHere={isPulled && !reaches(startPlot(layout), state)}
      />
      <WorkingRange state={state} layout={layout} />
    </Sheet>
  );
}

/** The figure of the lesson `stiff-spring`. */
export const figure: Figure = { finding, description, notes, Drawing };

/**
 * The rig to scale, and what one thing that goes wrong makes of its reading.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Dimension } from '../../figures/dimension.tsx';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { aFewHundredths } from './model.ts';
import { Comparison } from './rig/Comparison.tsx';
import { Gauge } from './rig/Gauge.tsx';
import { GAUGE, rigLayout } from './rig/layout.ts';
import { Strand } from './rig/Strand.tsx';
import type { Figure, State } from './state.ts';

const say = teller(aFewHundredths);
const BAR_WORDS = { wood: 'wooden', steel: 'steel', aluminium: 'aluminum' } as const;
const NOTHING = 1e3; // Pa: less is not shown

/** What goes wrong, in words. */
function cause(state: State): string {
  const { fault, bar } = state.values;
  const warmer = `${say(state, 'warming')} warmer`;
  return {
    angle: `A bar askew by ${say(state, 'angle')}`,
    hand: `A ${BAR_WORDS[bar]} bar ${warmer} than the band`,
    sun: `Sun that makes a ${BAR_WORDS[bar]} bar and the band ${warmer}`,
    slip: `A clamp that slips by ${say(state, 'slip')}`,
  }[fault];
}

function finding(state: State): string {
  const { feignedStress } = state.values;
  if (Math.abs(feignedStress) < NOTHING)
    return `${cause(state)} changes nothing: the dial says ${say(state, 'saidStress')}, and so it is.`;
  const size = say(state, 'feignedSize');
  const stress = say(state, 'rigStress');
  if (feignedStress < 0) return `${cause(state)} hides ${size} of the band’s ${stress}.`;
  return `${cause(state)} adds ${size} that the band does not carry, to its ${stress}.`;
}

function description(state: State): string {
  return `A strand of band seen from above. A bar is clamped to it at the left; at its other end a dial, whose plunger touches a clamp at the right. ${cause(state)}: the band is stretched by ${say(state, 'rigStretch')}, and the dial has moved by ${say(state, 'rigShown')}. Two bars compare the two.`;
}

function notes(): readonly string[] {
  return [
    `to scale, movements × ${GAUGE.times}`,
    'dashed: the clamp before the pull; hollow hand: the right reading',
  ];
}

function Drawing(state: State) {
  const layout = rigLayout(state.narrow);
  const { left, scale, dimension, narrow } = layout;
  const length = say(state, 'rigLength');
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Strand layout={layout} />
      <Gauge state={state} layout={layout} />
      <Dimension
        from={left}
        to={left + state.values.rigLength * scale}
        y={dimension}
        edge={dimension - (narrow ? 12 : 22)}
        text={narrow ? length : `gauge length ${length}`}
      />
      <Comparison state={state} layout={layout} />
    </Sheet>
  );
}

/** The second figure of the lesson `a-few-hundredths`. */
export const figure: Figure = { finding, description, notes, Drawing };

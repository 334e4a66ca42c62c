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
const BAR_WORDS = { wood: 'a wooden', steel: 'a steel', aluminium: 'an aluminum' } as const;
const NOTHING = 1e3; // Pa: less is not shown

/** What goes wrong, in words. */
function cause(state: State): string {
  const { fault, bar } = state.values;
  const warmer = `${BAR_WORDS[bar]} bar, ${say(state, 'warming')} warmer`;
  return {
    angle: `a bar askew by ${say(state, 'angle')}`,
    hand: `${warmer} than the band,`,
    sun: `${warmer} like the band,`,
    slip: `a clamp that slips by ${say(state, 'slip')}`,
  }[fault];
}

function finding(state: State): string {
  const { feignedStress } = state.values;
  const size = say(state, 'feignedSize');
  const much = feignedStress < 0 ? 'little' : 'much';
  const isRight = Math.abs(feignedStress) < NOTHING;
  const reads = isRight ? `reads right: ${say(state, 'saidStress')}` : `reads ${size} too ${much}`;
  return `With ${cause(state)} the dial ${reads}.`;
}

function description(state: State): string {
  return `A strand of band seen from above. A bar is clamped to it at the left; at its other end a dial, whose plunger touches a clamp at the right. With ${cause(state)} the band is stretched by ${say(state, 'rigStretch')}, and the dial has moved by ${say(state, 'rigShown')}. Two bars compare the two.`;
}

function notes(): readonly string[] {
  return [
    `to scale, movements × ${GAUGE.times}`,
    'dashed: the clamp before the pull; hollow hand: the right reading',
  ];
}

/** What the bar is made of, and how warm it is, where that matters. */
function BarWords(state: State) {
  const { fault, bar, rigLength } = state.values;
  const { left, scale, band, narrow } = rigLayout(state.narrow);
  if (fault !== 'hand' && fault !== 'sun') return null;
  return (
    <text
      class="note"
      x={left + (rigLength * scale) / 2}
      y={band - (narrow ? 18 : 36)}
      text-anchor="middle"
    >
      {BAR_WORDS[bar].replace(/^an? /, '')} bar, {say(state, 'warming')} warmer
    </text>
  );
}

function Drawing(state: State) {
  const layout = rigLayout(state.narrow);
  const { left, scale, dimension, narrow } = layout;
  const length = say(state, 'rigLength');
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Strand layout={layout} />
      <Gauge state={state} layout={layout} />
      <BarWords {...state} />
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

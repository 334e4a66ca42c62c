/**
 * What the day does to the tension under three tensioners: three strips on one scale, the setting in each as a dashed line;
 * in the first the reader's guess and the truth.
 * Units: SI in the state; drawing units otherwise.
 */
import { UprightTicks } from '../../../figures/axis-ticks.tsx';
import { ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { mill } from '../mill.worked.ts';
import { signed } from '../signed.ts';
import type { State } from '../state.ts';
import { drift, type Tensioner } from '../warmth.ts';
import { GuessAndTruth } from './GuessAndTruth.tsx';
import { day } from './hours.ts';
import { changeScale, type DayLayout, FURTHEST, type Strip, timeScale } from './layout.ts';

/** Level of the words for a band that is left tight overnight: above its line at any setting of the grips. */
const LEFT_TIGHT = 0.17;

interface PartProps {
  readonly state: State;
  readonly layout: DayLayout;
}

interface StripProps extends PartProps {
  readonly strip: Strip;
  readonly tensioner: Tensioner;
  readonly name: string;
  readonly first: number;
}

/** One strip: its name with what is left after the first hour, its setting, its line. */
function TensionStrip({ state, layout, strip, tensioner, name, first }: StripProps) {
  const { left, right } = layout;
  const [x, y] = [timeScale(layout), changeScale(layout, strip)];
  const points = day(state.values).map(
    ({ at, warmth }) => `${x(at)} ${y(drift(warmth, tensioner) / mill.setting)}`,
  );
  const said = formatQuantity(first, 'stress', state.system, {
    digits: tensioner === 'oil' ? undefined : 3,
  });
  const after = state.narrow ? tensioner === 'screw' && 'after 1 h: ' : 'after the first hour: ';
  return (
    <g>
      <text x={left} y={strip.name}>
        {name}
      </text>
      <text class="steel" x={right} y={strip.name} text-anchor="end">
        {after}
        {said}
      </text>
      <path class="hidden-edge" d={`M${left} ${y(0)}H${right}`} />
      <path class="steel-line" stroke-linejoin="round" d={`M${points.join('L')}`} />
    </g>
  );
}

/** All three strips, the scale at the first. */
export function Tensions({ state, layout }: PartProps) {
  const { strips, left } = layout;
  const { firstStress, firstStressSpring, frostChange, setting } = state.values;
  const y = changeScale(layout, strips.screw);
  const common = { state, layout };
  const names = state.narrow
    ? { screw: 'screw on the frame', spring: 'with a spring', oil: 'oil, constant pressure' }
    : {
        screw: 'screw, straight on the frame',
        spring: 'screw on a spring',
        oil: 'oil at constant pressure',
      };
  return (
    <g>
      <path class="axis" d={`M${left} ${y(FURTHEST.high)}V${y(FURTHEST.low)}`} />
      <UprightTicks
        ticks={ticks(FURTHEST.low, FURTHEST.high, 'percent', state.system, 4)}
        y={y}
        x={left}
      />
      <text class="note" x={0} y={strips.screw.name}>
        %
      </text>
      <text x={layout.right} y={y(LEFT_TIGHT)} text-anchor="end">
        {state.narrow
          ? 'left tight'
          : `left tight: ${signed(frostChange, 'stress', state.system, 2)} in the frost`}
      </text>
      <TensionStrip
        {...common}
        strip={strips.screw}
        tensioner="screw"
        name={names.screw}
        first={firstStress}
      />
      <GuessAndTruth {...common} />
      <TensionStrip
        {...common}
        strip={strips.spring}
        tensioner="spring"
        name={names.spring}
        first={firstStressSpring}
      />
      <TensionStrip
        {...common}
        strip={strips.oil}
        tensioner="oil"
        name={names.oil}
        first={setting}
      />
    </g>
  );
}

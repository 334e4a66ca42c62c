/**
 * The two parts that add, in numbers: at the outer face tension and bend, at the inner face tension less bend.
 * Units: SI in the state; drawing units otherwise.
 */
import { teller } from '../../../figures/teller.ts';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import type { BendLayout } from './layout.ts';

const say = teller(roundTheWheel);

interface SumProps {
  readonly state: State;
  readonly x: number;
  readonly y: number;
  readonly face: 'outer' | 'inner';
}

/** Words before a sum, and the sum. */
function Sum({ state, x, y, face }: SumProps) {
  const sum = say(state, face === 'outer' ? 'outerStress' : 'innerStress', 3);
  return (
    <text x={x} y={y}>
      {face} face:{' '}
      <tspan class="hand" data-sym="tension">
        {say(state, 'tension')}
      </tspan>
      {face === 'outer' ? ' + ' : ' − '}
      <tspan class="steel" data-sym="shownBending">
        {say(state, 'shownBending')}
      </tspan>
      {' = '}
      <tspan class="steel">{sum}</tspan>
    </text>
  );
}

/** Both sums. */
export function FaceSums({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: BendLayout;
}) {
  const { left, outerWords, innerWords } = layout.section;
  return (
    <g>
      <text class="numeral" x={left} y={outerWords}>
        A
      </text>
      <Sum state={state} x={left + 20} y={outerWords} face="outer" />
      <Sum state={state} x={left} y={innerWords} face="inner" />
    </g>
  );
}

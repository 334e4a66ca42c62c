/**
 * The rule on which the reader drags by how much one thing is made larger or smaller.
 * Units: shares; drawing units.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { linearScale } from '../../../figures/scale.ts';
import { quantitySpec } from '../../../models/define-model.ts';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import type { LifeLayout } from './layout.ts';
import { changeWords } from './rows.ts';

const TICKS = [-0.1, 0, 0.1];
const { min, max } = quantitySpec(roundTheWheel, 'change');

interface ChangeRuleProps {
  readonly state: State;
  readonly layout: LifeLayout;
}

/** The rule and its grip. */
export function ChangeRule({ state, layout }: ChangeRuleProps) {
  const { left, right, y, words } = layout.rule;
  const { change } = state.values;
  const x = linearScale([min, max], [left, right]);
  const ticks = TICKS.map((value) => ({ value, text: changeWords(value, state.system) }));
  return (
    <g>
      <text class="hand" x={(left + right) / 2} y={words} text-anchor="middle" data-sym="change">
        each by itself: {changeWords(change, state.system)}
      </text>
      <path class="axis" d={`M${left} ${y}H${right}`} />
      <LevelTicks ticks={ticks} x={x} y={y} drop={30} />
      <Handle
        model={roundTheWheel}
        state={state}
        x={x(change)}
        y={y}
        input="change"
        label="Change one thing"
        text={changeWords(change, state.system)}
        drag="x"
        perUnit={(max - min) / (right - left)}
      />
    </g>
  );
}

/**
 * The reader's tension on the scale of the window: a line through all bars, with its grip.
 * Units: SI in the state; drawing units otherwise.
 */
import { Handle } from '../../../figures/Handle.tsx';
import { teller } from '../../../figures/teller.ts';
import { whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import { MOST_STRESS, stressScale } from './EdgeBars.tsx';
import type { WindowLayout } from './layout.ts';
import { ORDER } from './rows.ts';

const say = teller(whatTensionBuys);

/** The line through the bars: on a phone words are between them, so it is broken there. */
function through({ narrow, top, thick, step }: WindowLayout, at: number): string {
  if (!narrow) return `M${at} ${top - 16}V${top + (ORDER.length - 1) * step + thick + 4}`;
  return ORDER.map((_, place) => `M${at} ${top + place * step}v${thick}`).join('');
}

/** Line and grip. */
export function YourTension({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: WindowLayout;
}) {
  const { left, right, grip } = layout;
  const at = stressScale(layout)(state.values.stress);
  return (
    <g data-sym="stress">
      <path class="hand-line" d={through(layout, at)} />
      <text class="hand" x={at + 22} y={grip + 5}>
        {say(state, 'stress')}
      </text>
      <Handle
        model={whatTensionBuys}
        state={state}
        x={at}
        y={grip}
        input="stress"
        label="Move your tension"
        drag="x"
        perUnit={MOST_STRESS / (right - left)}
      />
    </g>
  );
}

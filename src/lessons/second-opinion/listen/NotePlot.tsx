/**
 * Stress against the note of the span, a curve that rises with the square: the reader's note with its interval, the stress
 * that it tells with its own, and, hollow, what it would tell as the second tone.
 * Units: SI in the state; drawing units otherwise.
 */
import { workingStress } from '../../../core/assumptions.ts';
import { LevelTicks, UprightTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import { secondOpinion } from '../model.ts';
import type { State } from '../state.ts';
import type { ListenLayout } from './layout.ts';
import { StressWords } from './StressWords.tsx';
import { curve, isAbove, NOTES, notePlot, STRESSES } from './scales.ts';

interface PartProps {
  readonly state: State;
  readonly layout: ListenLayout;
}

function Ground({ state, layout }: PartProps) {
  const { left, right, top, bottom, words } = layout;
  const { x, y } = notePlot(layout);
  const { system, narrow } = state;
  const stress = ticks(STRESSES[0], STRESSES[1], 'stress', system, narrow ? 3 : 5);
  return (
    <g>
      <rect
        class="shade-fill"
        x={left}
        y={y(workingStress.high)}
        width={right - left}
        height={y(workingStress.low) - y(workingStress.high)}
      />
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks ticks={stress} x={left} y={y} />
      <LevelTicks
        ticks={ticks(NOTES[0], NOTES[1], 'frequency', system, narrow ? 4 : 7)}
        x={x}
        y={bottom}
        drop={34}
      />
      <text class="note" x={0} y={top - 12}>
        stress, {unitLabel('stress', system)}
      </text>
      <text class="note" x={right} y={words} text-anchor="end">
        note, Hz
      </text>
    </g>
  );
}

/** From the note up to the curve and across, as wide as both are uncertain. */
function Reading({ state, layout }: PartProps) {
  const { left, top, bottom } = layout;
  const { x, y } = notePlot(layout);
  const { note, noteWidth, noteStress, noteLow, noteHigh, isTooLow } = state.values;
  const at = x(note);
  if (isTooLow || isAbove(state)) return <path class="hand-thin" d={`M${at} ${bottom}V${top}`} />;
  const high = Math.max(top, y(noteHigh));
  const [low, half] = [y(noteLow), x(note + noteWidth) - at];
  return (
    <g>
      <rect
        class="hand-wash"
        x={at - half}
        y={y(noteStress)}
        width={2 * half}
        height={bottom - y(noteStress)}
      />
      <rect class="steel-wash" x={left} y={high} width={at - left} height={low - high} />
      <path class="hand-thin" d={`M${at} ${bottom}V${y(noteStress)}`} />
      <path class="steel-thin" d={`M${at} ${y(noteStress)}H${left}`} />
      <circle class="steel-fill" cx={at} cy={y(noteStress)} r={5} />
    </g>
  );
}

/** The same note as the second tone of a slacker band. */
function AsSecond({ state, layout }: PartProps) {
  const { x, y } = notePlot(layout);
  const { canBeSecond, firstIfSecond, ifSecond } = state.values;
  const isThere = canBeSecond === 1 && ifSecond <= STRESSES[1];
  const stress = formatQuantity(ifSecond, 'stress', state.system);
  const said = canBeSecond === 1 ? stress : 'too slack to tell';
  return (
    <g>
      {isThere && (
        <circle class="outline paper-fill" cx={x(firstIfSecond)} cy={y(ifSecond)} r={5} />
      )}
      <circle class="outline" cx={layout.left + 6} cy={layout.ghost - 5} r={5} />
      <text x={layout.left + 18} y={layout.ghost}>
        if the note were the second tone: {said}
      </text>
    </g>
  );
}

/** The whole plot with the grip of the note. */
export function NotePlot({ state, layout }: PartProps) {
  const { x } = notePlot(layout);
  return (
    <g>
      <Ground state={state} layout={layout} />
      <Reading state={state} layout={layout} />
      <path class="outline" d={curve(state, layout)} />
      <AsSecond state={state} layout={layout} />
      <StressWords state={state} layout={layout} />
      <Handle
        model={secondOpinion}
        state={state}
        x={x(state.values.note)}
        y={layout.bottom}
        input="note"
        label="Move the note"
        drag="x"
        perUnit={(NOTES[1] - NOTES[0]) / (layout.right - layout.left)}
      />
    </g>
  );
}

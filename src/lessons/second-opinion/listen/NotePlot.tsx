/**
 * Stress against the note of the span, a curve that rises with the square: the reader's note with its interval, the stress
 * that it tells with its own, and, hollow, what it would tell as the second tone.
 * Units: SI in the state; drawing units otherwise.
 */
import { workingStress } from '../../../core/assumptions.ts';
import { pitchFromStress, stressFromPitch } from '../../../core/span.ts';
import { LevelTicks, UprightTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { linearScale, ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import { secondOpinion } from '../model.ts';
import { NOTE_RANGE } from '../note-range.ts';
import type { State } from '../state.ts';
import { stripOf } from '../strip.ts';
import type { ListenLayout } from './layout.ts';

const NOTES = [0, 420] as const; // Hz
const STRESSES = [0, 250e6] as const; // Pa
const POINTS = 40;
const CLEAR = 50; // drawing units over the axis, room for the words beside a low point

interface PartProps {
  readonly state: State;
  readonly layout: ListenLayout;
}

/** The scales of the plot. */
export function notePlot({ left, right, top, bottom }: ListenLayout) {
  return { x: linearScale(NOTES, [left, right]), y: linearScale(STRESSES, [bottom, top]) };
}

/** Whether the stress that the note tells is above the plot. */
export const isAbove = ({ values }: State): boolean => values.noteStress > STRESSES[1];

/** Where the curve of the reader's span has a stress, across the drawing. */
function acrossAt({ values }: State, layout: ListenLayout, stress: number): number {
  return notePlot(layout).x(pitchFromStress({ ...stripOf(values.band, values.span), stress }));
}

/** The curve from the lowest note of the span to where it leaves the plot. */
function curve({ values }: State, layout: ListenLayout): string {
  const { x, y } = notePlot(layout);
  const strip = stripOf(values.band, values.span);
  const lowest = Math.max(values.lowestNote, NOTE_RANGE.low);
  const highest = Math.min(NOTES[1], pitchFromStress({ ...strip, stress: STRESSES[1] }));
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const frequency = lowest + ((highest - lowest) * place) / POINTS;
    return `${x(frequency)} ${y(stressFromPitch({ ...strip, frequency }))}`;
  });
  return `M${points.join('L')}`;
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

/** What is said of the stress. */
function stressWords(state: State): string {
  const { noteStress, noteExpanded, isTooLow } = state.values;
  if (isTooLow) return 'too low for this span';
  if (isAbove(state)) return `${formatQuantity(noteStress, 'stress', state.system)}, off the plot`;
  return formatQuantity(noteStress, 'stress', state.system, { uncertainty: noteExpanded });
}

/** Right of the point and under the curve, where there is room; else left of the point and over it. */
function wordsPlace(state: State, layout: ListenLayout) {
  const { right, bottom, top } = layout;
  const { x, y } = notePlot(layout);
  const { note, noteStress, isTooLow } = state.values;
  const [at, level] = [x(note), y(noteStress)];
  const most = right - (state.narrow ? 110 : 150);
  const isOff = isTooLow === 1 || isAbove(state);
  const underCurve = acrossAt(state, layout, (STRESSES[1] * CLEAR) / (bottom - top)) + 8;
  const beside = isOff ? at + 14 : Math.max(at + 14, underCurve);
  if (beside <= most)
    return { x: beside, y: isOff ? top + 8 : Math.min(bottom - 28, level + 24), anchor: 'start' };
  return { x: at - 14, y: isOff ? top + 8 : Math.max(top + 8, level - 12), anchor: 'end' };
}

/** What the stress is, beside the point. */
function Words({ state, layout }: PartProps) {
  const { x, y, anchor } = wordsPlace(state, layout);
  return (
    <text class="steel halo" x={x} y={y} text-anchor={anchor} data-sym="noteStress">
      {stressWords(state)}
    </text>
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
      <Words state={state} layout={layout} />
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

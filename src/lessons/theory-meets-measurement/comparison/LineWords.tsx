/**
 * What the lines and marks of the comparison are, written where they run: the reader's line and the fit at their ends,
 * prediction and toe where no line can come; only the thin lines of the fit, which run too close together, have a key.
 * Units: SI in the state; drawing units otherwise.
 */

import type { TorqueScales } from '../../../figures/stress-plot/scales.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { known } from '../results.worked.ts';
import type { State } from '../state.ts';
import { comparisonLayout, TORQUE_ENDS } from './layout.ts';

interface LineWordsProps {
  readonly state: State;
  readonly scales: TorqueScales;
}

interface EndWordsProps {
  readonly y: number;
  readonly scales: TorqueScales;
  readonly ink: 'hand' | 'steel';
  readonly name: string;
  readonly value: string;
}

/** Two lines of words at the right end of a line of the plot. */
function AtEnd({ y, scales, ink, name, value }: EndWordsProps) {
  return (
    <g transform={`translate(${scales.frame.right + 6} ${y})`}>
      <text class={ink} y={-3}>
        {name}
      </text>
      <text class={ink} y={14}>
        {value}
      </text>
    </g>
  );
}

/** The reader's own line, moved aside where the fit's words are. */
function LineEnds({ state, scales }: LineWordsProps) {
  const { efficiency, ownEfficiency, lineSlope, slope, shown } = state.values;
  const end = (rise: number) => scales.y(rise * (TORQUE_ENDS[1] - known.drag));
  const percent = (value: number) => formatQuantity(value, 'percent', state.system);
  const apart = 2.2 * comparisonLayout(state.narrow).line;
  const fit = end(slope);
  const mine = end(lineSlope);
  const clear = mine < fit ? Math.min(mine, fit - apart) : Math.max(mine, fit + apart);
  const isFit = shown === 'fit';
  return (
    <g>
      <AtEnd
        scales={scales}
        y={isFit ? clear : mine}
        ink="hand"
        name="your line"
        value={percent(efficiency)}
      />
      {isFit && (
        <AtEnd scales={scales} y={fit} ink="steel" name="the fit" value={percent(ownEfficiency)} />
      )}
    </g>
  );
}

/** The key of the fit's thin lines, in the lower right of the plot, under every line. */
function FitKey({ state, scales }: LineWordsProps) {
  const { words, line } = comparisonLayout(state.narrow);
  const rows = [
    { dashes: '2 4', text: state.narrow ? '95 % ends' : 'ends of the fit, 95 %' },
    { dashes: '9 4', text: state.narrow ? 'both errors' : 'line through both errors' },
  ];
  return (
    <g transform={`translate(${scales.x(words.fit)} ${scales.frame.bottom - 6})`}>
      {rows.map(({ dashes, text }, row) => (
        <g key={dashes} transform={`translate(0 ${(row - 1) * line})`}>
          <path class="steel-thin" d="M0 -5H20" stroke-dasharray={dashes} />
          <text class="halo" x={26}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}

/** All words in the plot that depend on nothing that the reader sets. */
export function StillWords({ state, scales }: LineWordsProps) {
  const { words, line } = comparisonLayout(state.narrow);
  const [area, toe] = [words.area, words.toe].map(([torque, stress]) => ({
    x: scales.x(torque),
    y: scales.y(stress),
  }));
  return (
    <g>
      <text {...area} text-anchor="end">
        predicted, 95 %
      </text>
      <text class="steel" x={toe?.x} y={(toe?.y ?? 0) - line}>
        readings
      </text>
      <text class="steel" {...toe}>
        {state.narrow ? 'hollow: toe' : 'hollow: in the toe'}
      </text>
    </g>
  );
}

/** The words that follow what the reader sets. */
export function LineWords(props: LineWordsProps) {
  return (
    <g>
      <LineEnds {...props} />
      {props.state.values.shown === 'fit' && <FitKey {...props} />}
    </g>
  );
}

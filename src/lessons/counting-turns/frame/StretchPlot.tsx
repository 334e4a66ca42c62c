/**
 * Stretch by the dial against turns of the nut between two readings: the steep line of a frame that does not give, the
 * reading with what it may be off by, and between the two the turns that the frame took.
 * Units: SI in the state; drawing units otherwise; the handles' `perUnit` in turns and in m.
 */

import { ArrowHead, Dimension } from '../../../figures/dimension.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { formatParts, formatQuantity } from '../../../units/format-quantity.ts';
import { countingTurns } from '../model.ts';
import {
  Axes,
  MOST,
  type PlotProps,
  RigidLine,
  readInTurns,
  type Scales,
  scales,
} from './parts.tsx';

interface BandTurnsProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly edge: number;
}

/** The band's part as a dimension; too short for arrows, as a plain line, since outside them are the axis' numbers. */
function BandTurns({ from, to, y, edge }: BandTurnsProps) {
  const ends = `M${from} ${edge}V${y - 5}M${to} ${edge}V${y - 5}`;
  return (
    <g data-sym="bandWay">
      <path class="axis" d={ends} />
      <path class="steel-line" d={`M${from} ${y}H${to}`} />
      {to - from > 24 && <ArrowHead x={from} y={y} angle={180} ink="steel" />}
      {to - from > 24 && <ArrowHead x={to} y={y} angle={0} ink="steel" />}
    </g>
  );
}

/** The reading, the turns of band and frame, and how far left and right it may really lie. */
function Reading({ state, layout, x, y }: PlotProps & Scales) {
  const { readStretch } = state.values;
  const { all, band, frame, doubt } = readInTurns(state);
  const place = { x: x(all), y: y(readStretch) };
  const [from, to] = [
    Math.max(layout.left, x(all - doubt)),
    Math.min(layout.right + 8, x(all + doubt)),
  ];
  const say = (name: string, turns: number) =>
    `${name} ${formatQuantity(turns, 'turns', state.system)}`;
  const { number } = formatParts(band, 'turns', state.system);
  const short = place.x - x(band) < 30; // the arrows then stand outside
  const bandShort = x(band) - x(0) < (layout.narrow ? 44 : 120); // its words are then longer than it
  const clearOfLine = layout.narrow ? 42 : 68; // the steep line then passes left of its words
  const crowded = place.x > layout.right - 110;
  const above = { y: place.y - 20, edge: place.y };
  return (
    <g>
      <path
        class="construction"
        d={`M${layout.left} ${place.y}H${place.x}V${layout.bottom}M${x(0)} ${y(0)}L${place.x} ${place.y}`}
      />
      <BandTurns from={x(0)} to={x(band)} {...above} />
      <text
        class="steel halo"
        x={bandShort ? x(band) + clearOfLine : (x(0) + x(band)) / 2}
        y={above.y - (bandShort ? 14 : 8)}
        text-anchor={bandShort ? 'start' : 'middle'}
      >
        {layout.narrow ? number : say('band', band)}
      </text>
      {frame > 0 && (
        <g data-sym="frameGive">
          <Dimension from={x(band)} to={place.x} {...above} text="" />
          <text
            class="halo"
            x={place.x + (short ? 40 : 8)}
            y={above.y + (crowded ? -8 : 5)}
            text-anchor={crowded ? 'end' : 'start'}
          >
            {say('frame', frame)}
          </text>
        </g>
      )}
      <path
        class="outline"
        d={`M${from} ${place.y - 7}v14M${to} ${place.y - 7}v14M${from} ${place.y}H${to}`}
      />
      <circle class="ink-fill" cx={place.x} cy={place.y} r={5} />
    </g>
  );
}

function Handles({ state, layout, x, y }: PlotProps & Scales) {
  const { readTurns, readStretch } = state.values;
  const { left, right, top, bottom } = layout;
  return (
    <g>
      <Handle
        model={countingTurns}
        state={state}
        x={x(readTurns)}
        y={bottom}
        input="readTurns"
        label="Set the turns that were counted"
        drag="x"
        perUnit={MOST.turns / (right - left)}
      />
      <Handle
        model={countingTurns}
        state={state}
        x={left}
        y={y(readStretch)}
        input="readStretch"
        label="Set the rise of the dial"
        drag="y"
        perUnit={-MOST.stretch / (bottom - top)}
      />
    </g>
  );
}

/** The plot, with its two grips on its axes. */
export function StretchPlot(props: PlotProps) {
  const all = { ...props, ...scales(props.layout) };
  return (
    <g>
      <Axes {...all} />
      <RigidLine {...all} />
      <Reading {...all} />
      <Handles {...all} />
    </g>
  );
}

/**
 * The ground of the plot that finds the frame: scales, axes, and the line of a frame that does not give.
 * Units: SI in the state; drawing units otherwise.
 */

import { LevelTicks, UprightTicks } from '../../../figures/axis-ticks.tsx';
import { linearScale, type Scale, ticks } from '../../../figures/scale.ts';
import { unitLabel } from '../../../units/label.ts';
import type { State } from '../state.ts';
import type { FramePlotLayout } from './layout.ts';

/** What the parts of the plot are given. */
export interface PlotProps {
  readonly state: State;
  readonly layout: FramePlotLayout;
}

/** The plot's two scales. */
export interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

/** The right and the upper end of the plot. */
export const MOST = { turns: 1, stretch: 0.3e-3 } as const;

/** Turns to the right, stretch upwards. */
export function scales({ left, right, top, bottom }: FramePlotLayout): Scales {
  return {
    x: linearScale([0, MOST.turns], [left, right]),
    y: linearScale([0, MOST.stretch], [bottom, top]),
  };
}

/** The reading in turns: all of it, the band's part, and what it may be off by. */
export function readInTurns({ values }: State) {
  const { readTurns, bandWay, giveDoubt, nutTravel } = values;
  const perMetre = readTurns / nutTravel;
  const band = bandWay * perMetre;
  return { all: readTurns, band, frame: readTurns - band, doubt: giveDoubt * perMetre };
}

/** Both axes with their ticks. */
export function Axes({ state, layout, x, y }: PlotProps & Scales) {
  const { left, right, top, bottom, narrow } = layout;
  const { system } = state;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks
        ticks={ticks(0, MOST.stretch, 'stretch', system, narrow ? 3 : 6)}
        x={left}
        y={y}
        gap={20}
      />
      <text class="note" x={left} y={14} text-anchor={narrow ? 'start' : 'middle'}>
        rise of the dial, {unitLabel('stretch', system)}
      </text>
      <LevelTicks
        ticks={ticks(0, MOST.turns, 'turns', system, narrow ? 4 : 10)}
        x={x}
        y={bottom}
        drop={34}
      />
      <text class="note" x={right} y={bottom + 54} text-anchor="end">
        turns of the nut since the first reading
      </text>
    </g>
  );
}

/** Stretch against turns if the frame gave nothing. */
export function RigidLine({ state, layout, x, y }: PlotProps & Scales) {
  const { readStretch } = state.values;
  const { band } = readInTurns(state);
  const end = { turns: (band * MOST.stretch) / readStretch, stretch: MOST.stretch };
  const isReadingThere = y(readStretch) - y(end.stretch) < 16; // with its error bar, where the words are else
  return (
    <g>
      <path class="steel-line" d={`M${x(0)} ${y(0)}L${x(end.turns)} ${y(end.stretch)}`} />
      <text class="steel halo" x={x(end.turns) + 8} y={y(end.stretch) + (isReadingThere ? 20 : 4)}>
        {layout.narrow
          ? 'if only the band gave'
          : 'if only the band gave and the frame stood still'}
      </text>
    </g>
  );
}

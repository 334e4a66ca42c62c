/**
 * The site's one idea in a drawing: handle, screw, wheel, strand, steel and dial of one invented mill.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Callouts } from '../../figures/mill/Callouts.tsx';
import { BandSection, Gauge } from '../../figures/mill/Gauge.tsx';
import { Loop } from '../../figures/mill/Loop.tsx';
import { millLayout } from '../../figures/mill/layout.ts';
import { Tensioner } from '../../figures/mill/Tensioner.tsx';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import type { titleMill } from '../../models/mills/title-mill.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';

type State = FigureState<typeof titleMill>;

function finding({ values, system }: State): string {
  const torque = formatQuantity(values.torque, 'torque', system);
  const stress = formatQuantity(values.stress, 'stress', system);
  const stretch = formatQuantity(values.stretch, 'stretch', system);
  return `By theory ${torque} on this handle is ${stress} in the steel. A dial can tell: it should move ${stretch}.`;
}

function description({ values, system }: State): string {
  const force = formatQuantity(values.strandForce, 'force', system);
  return `A band runs round two wheels on a beam. A screw with a handle at the right pulls one wheel outwards; each of the two strands pulls back with ${force}. A dial on a bar is clamped to the upper strand, and the band’s section is drawn on its own below.`;
}

function notes({ values, system }: State): readonly string[] {
  const { low, high } = OTTERSLEIGH.threadFriction;
  const range = formatRange(values.stressLow, values.stressHigh, 'stress', system);
  return [
    `an invented mill, ${OTTERSLEIGH.place}; loop to scale`,
    'screw, dial and section drawn larger',
    `thread friction guessed: from ${low} to ${high} the stress is ${range}`,
  ];
}

function Drawing(state: State) {
  const layout = millLayout(state.narrow);
  const { idPrefix, system } = state;
  return (
    <svg
      viewBox={`0 0 ${layout.width} ${layout.height}`}
      role="img"
      aria-label={finding(state)}
      aria-describedby={`${idPrefix}-description`}
    >
      <Loop layout={layout} />
      <Tensioner layout={layout} id={`${idPrefix}-plate`} />
      <Gauge layout={layout} system={system} />
      <BandSection layout={layout} system={system} id={`${idPrefix}-section`} />
      <Callouts state={state} layout={layout} />
    </svg>
  );
}

/** The drawing of the title page. */
export const titlePage: FigureModule<typeof titleMill> = { finding, description, notes, Drawing };

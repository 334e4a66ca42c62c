/**
 * The site's one idea in a drawing: handle, screw, wheel, strand, steel and dial of one invented mill.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { OTTERSLEIGH } from '../models/ottersleigh/mill.ts';
import { formatQuantity, formatRange } from '../units/format-quantity.ts';
import type { FigureModule, FigureState } from './figure.ts';
import { MillCallouts } from './MillCallouts.tsx';
import { BandSection, MillGauge } from './MillGauge.tsx';
import { MillLoop } from './MillLoop.tsx';
import { MillTensioner } from './MillTensioner.tsx';
import { millLayout } from './mill-layout.ts';

function finding({ values, system }: FigureState): string {
  const torque = formatQuantity(values['torque'] ?? 0, 'torque', system);
  const stress = formatQuantity(values['stress'] ?? 0, 'stress', system);
  const stretch = formatQuantity(values['stretch'] ?? 0, 'stretch', system);
  return `By theory ${torque} on this handle is ${stress} in the steel. A dial can tell: it should move ${stretch}.`;
}

function description({ values, system }: FigureState): string {
  const force = formatQuantity(values['strandForce'] ?? 0, 'force', system);
  return `A band runs round two wheels on a beam. A screw with a handle at the right pulls one wheel outwards; each of the two strands pulls back with ${force}. A dial on a bar is clamped to the upper strand, and the band’s section is drawn on its own below.`;
}

function notes({ values, system }: FigureState): readonly string[] {
  const { low, high } = OTTERSLEIGH.threadFriction;
  const range = formatRange(values['stressLow'] ?? 0, values['stressHigh'] ?? 0, 'stress', system);
  return [
    `an invented mill, ${OTTERSLEIGH.place}; loop to scale`,
    'screw, dial and section drawn larger',
    `thread friction guessed: from ${low} to ${high} the stress is ${range}`,
  ];
}

function Drawing(state: FigureState) {
  const layout = millLayout(state.narrow);
  const { idPrefix, system } = state;
  return (
    <svg
      viewBox={`0 0 ${layout.width} ${layout.height}`}
      role="img"
      aria-label={finding(state)}
      aria-describedby={`${idPrefix}-description`}
    >
      <MillLoop layout={layout} />
      <MillTensioner layout={layout} id={`${idPrefix}-plate`} />
      <MillGauge layout={layout} system={system} />
      <BandSection layout={layout} system={system} id={`${idPrefix}-section`} />
      <MillCallouts state={state} layout={layout} />
    </svg>
  );
}

/** The drawing of the title page. */
export const titlePage: FigureModule = { finding, description, notes, Drawing };

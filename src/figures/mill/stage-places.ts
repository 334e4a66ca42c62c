/**
 * Where on the mill the six stages of the chain are written, from the handle to the dial.
 * Units: drawing units.
 */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import type { MillLayout } from './layout.ts';

/** A stage by the name that every model of the chain gives its quantity. */
export type Stage = 'torque' | 'thrust' | 'wheelForce' | 'strandForce' | 'stress' | 'stretch';

/** Where words stand, and which way they run from there. */
export interface StagePlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** From the screw down to the line that names it, clear of the wheel. */
export function screwLeader({ plate, axis, beam, narrow }: MillLayout) {
  return {
    x: plate - (narrow ? 6 : 12),
    from: axis + beam * 0.22,
    to: axis + beam * (narrow ? 2.6 : 3.9),
  };
}

/** The places of all stages but the stress, which has none on every sheet. */
export function stagePlaces(
  layout: MillLayout,
  wheel: number,
): Readonly<Record<Exclude<Stage, 'stress'>, StagePlace>> {
  const { axis, radius, beam, middle, scale, dial, end, handle, narrow } = layout;
  const leader = screwLeader(layout);
  const top = axis - radius;
  const dialEdge = middle + (OTTERSLEIGH.gaugeLength / 2) * scale;
  return narrow
    ? {
        torque: { x: handle, y: axis - end.reach - 8, anchor: 'middle' },
        thrust: { x: leader.x, y: leader.to + 16, anchor: 'middle' },
        wheelForce: { x: wheel, y: axis - beam - 7, anchor: 'middle' },
        strandForce: { x: wheel + 8, y: top - 3, anchor: 'start' },
        stretch: { x: dialEdge + 7, y: top - dial - 6, anchor: 'start' },
      }
    : {
        torque: { x: end.x + 20, y: end.y + end.reach + 40, anchor: 'middle' },
        thrust: { x: leader.x - 10, y: leader.to + 17, anchor: 'start' },
        wheelForce: { x: wheel, y: axis - beam - 11, anchor: 'middle' },
        strandForce: { x: wheel + 10, y: top - 4, anchor: 'start' },
        stretch: { x: dialEdge + 10, y: top - dial - 14, anchor: 'start' },
      };
}

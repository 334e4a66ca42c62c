/**
 * The load that tightens the worksheet's band: the torque on its screw, or the pressure in its cylinder; what it is
 * called, which box has it, and how well wrench or gauge tell it.
 * Units: SI only (N·m of a torque, Pa of a pressure).
 * Source: definition; how well they tell it, own-assumptions.ts.
 */
import type { InputValue, Worksheet, WorksheetTensioner } from './inputs.ts';
import { isUsable } from './known-inputs.ts';
import {
  gaugeReading,
  usualGaugeClass,
  usualGaugeTop,
  wrenchReading,
  wrenchScale,
} from './own-assumptions.ts';

/** What the load is, and so the name of its boxes. */
export type LoadName = 'torque' | 'pressure';

/** What the load of a tensioner is. */
export const loadName = ({ kind }: Pick<WorksheetTensioner, 'kind'>): LoadName =>
  kind === 'cylinder' ? 'pressure' : 'torque';

/** The load among boxes that have both. */
export const loadIn = (
  { tensioner }: Pick<Worksheet, 'tensioner'>,
  boxes: { readonly torque: InputValue; readonly pressure?: InputValue },
): InputValue => boxes[loadName(tensioner)];

/** How well a load repeats, as a share of it, and the least doubt of reading one. */
export interface LoadReading {
  readonly share: number;
  readonly least: number;
}

/** How well the wrench or the gauge of a tensioner is read. */
export const loadReading = ({ kind }: Pick<WorksheetTensioner, 'kind'>): LoadReading =>
  kind === 'cylinder' ? gaugeReading : wrenchReading;

/** Standard uncertainty of a load as it is read. */
export const readLoadDoubt = ({ least, share }: LoadReading, load: number): number =>
  Math.max(least, share * load);

/** How far a wrench may be off, as a share of the torque: as told, or as many are. */
export const wrenchShare = ({ wrenchClass }: Pick<WorksheetTensioner, 'wrenchClass'>): number =>
  isUsable(wrenchClass) ? wrenchClass : wrenchScale;

/** How far the scale may be off at a load: of a wrench a share of that, of a gauge one of its full scale. */
export function scaleHalfWidth(
  { kind, cylinder, ...wrench }: WorksheetTensioner,
  load: number,
): number {
  if (kind === 'screw') return wrenchShare(wrench) * load;
  const { gaugeTop, gaugeClass } = cylinder;
  const top = isUsable(gaugeTop) ? gaugeTop : usualGaugeTop * load;
  return (isUsable(gaugeClass) ? gaugeClass : usualGaugeClass) * top;
}

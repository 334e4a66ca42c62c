/**
 * The prediction of a sheet over torque, from the drag on, as its figures draw it.
 * Units: SI.
 * Source: core/worksheet.
 */
import { type PredictedPoint, predictedCurve, type Worksheet } from '../../core/worksheet.ts';
import { there } from './there.ts';

const STEPS = 6;

/** From the drag torque up to a torque, N·m; nothing is predicted at the drag itself. */
export function curveUpTo(sheet: Worksheet, upTo: number): readonly PredictedPoint[] {
  const { dragTorque: drag = 0 } = sheet.tensioner;
  const torques = Array.from({ length: STEPS }, (_, i) => drag + ((i + 1) / STEPS) * (upTo - drag));
  const { points } = there(predictedCurve(sheet, torques));
  return [{ torque: drag, stress: 0, low: 0, high: 0 }, ...points];
}

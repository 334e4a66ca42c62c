/**
 * Where the chart wants the prediction to be known.
 * Units: SI.
 */
import { isApart, type WorksheetResults } from '../../core/worksheet.ts';

const CURVE_STEPS = 24;
const ENDS_A_DOUBLING = 8;

/** Rounded up to one of few ends, so that a setting that moves a little asks for no other curve. */
const upToAnEnd = (torque: number): number =>
  2 ** (Math.ceil(Math.log2(torque) * ENDS_A_DOUBLING) / ENDS_A_DOUBLING);

/** The torques, N·m, at which the prediction is to be known: evenly past the highest that is shown, at each reading and at the torque in use. */
export function curveTorques({
  points,
  predicted,
  predictedAtUse,
  setting,
  agreement,
}: WorksheetResults): readonly number[] {
  const measured = points.ready ? points.points.map(({ torque }) => torque) : [];
  const shown = [
    ...measured,
    ...(predicted.ready ? [predicted.operands.torque] : []),
    ...(setting.ready && !isApart({ agreement }) ? [setting.torque] : []),
  ];
  const used = predictedAtUse.ready ? [predictedAtUse.operands.torque] : [];
  const top = upToAnEnd(Math.max(0, ...shown, ...used));
  const even = Array.from({ length: CURVE_STEPS + 1 }, (_, i) => (top * i) / CURVE_STEPS);
  return [...new Set([...even, ...measured, ...used])].sort((a, b) => a - b);
}

/**
 * The torque that the worksheet asks about, and the torque that turns its screw with no load. Where that is not known
 * it lies anywhere from none to a tenth of the torque.
 * Units: SI only (N·m).
 * Source: definition; the share, assumptions.ts.
 */

import type { InputByBounds, InputByUncertainty } from '../statistics/uncertain-input.ts';
import { rectangular } from './budget.ts';
import type { Worksheet } from './inputs.ts';
import { knownInputs } from './known-inputs.ts';
import { worksheetRows } from './measure/readings.ts';
import type { Outcome } from './outcome.ts';
import { ready, whenReady } from './outcome.ts';
import { mostDragShare } from './own-assumptions.ts';

/** A torque, N·m. */
export interface TorqueAtHand {
  readonly torque: number;
}

/** The torque that turns the screw with no load. */
export interface DragTorque {
  readonly dragTorque: number; // N·m
  readonly uncertainty: number; // N·m, standard
  readonly input: InputByBounds | InputByUncertainty;
  readonly isAssumed: boolean;
}

/** The top torque of the readings; without any, the torque that the band is tightened to now, which is then waited for. */
export function torqueAtHand(worksheet: Worksheet): Outcome<TorqueAtHand> {
  const rows = worksheetRows(worksheet);
  if (rows.ready) return ready({ torque: rows.topTorque });
  return knownInputs({ torque: ['use.torque', worksheet.use.torque] });
}

/** The no-load torque as typed, or as a range below a torque; waits for that one where nothing is typed. */
export function worksheetDrag(
  worksheet: Worksheet,
  torque: Outcome<TorqueAtHand> = torqueAtHand(worksheet),
): Outcome<DragTorque> {
  const { dragTorque, dragTorqueUncertainty } = worksheet.tensioner;
  if (dragTorque === undefined)
    return whenReady({ torque }, ({ torque }) => assumed(torque.torque));
  const known = knownInputs({
    dragTorque: ['tensioner.dragTorque', dragTorque, 'notNegative'],
    uncertainty: ['tensioner.dragTorqueUncertainty', dragTorqueUncertainty, 'notNegative'],
  });
  return whenReady({ known }, ({ known: { dragTorque: value, uncertainty } }) => {
    const input = { value, standardUncertainty: uncertainty };
    return ready({ dragTorque: value, uncertainty, input, isAssumed: false });
  });
}

function assumed(torque: number): Outcome<DragTorque> {
  const middle = (mostDragShare * torque) / 2;
  const input = rectangular(middle, middle);
  return ready({ dragTorque: middle, uncertainty: middle / Math.sqrt(3), input, isAssumed: true });
}

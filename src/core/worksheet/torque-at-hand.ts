/**
 * The torque that the worksheet asks about, and the torque that turns its screw with no load; of a cylinder, pressures.
 * Where the second is not known it lies anywhere from none to a small share of the first.
 * Units: SI only (N·m; Pa of a cylinder).
 * Source: definition; the share, assumptions.ts.
 */

import type { InputByBounds, InputByUncertainty } from '../statistics/uncertain-input.ts';
import { rectangular } from './budget.ts';
import type { Worksheet, WorksheetTensioner } from './inputs.ts';
import { knownInputs, type WantedInput } from './known-inputs.ts';
import { loadIn, loadName } from './load.ts';
import { worksheetRows } from './measure/readings.ts';
import type { Outcome } from './outcome.ts';
import { ready, whenReady } from './outcome.ts';
import {
  dragTorqueDoubt,
  mostDragShare,
  mostNoLoadShare,
  noLoadPressureDoubt,
} from './own-assumptions.ts';
import type { WorksheetPath } from './path.ts';

/** A torque, N·m, or a pressure, Pa. */
export interface TorqueAtHand {
  readonly torque: number;
}

/** The torque that turns the screw with no load. */
export interface DragTorque {
  readonly dragTorque: number; // N·m
  readonly uncertainty: number; // N·m, standard
  readonly input: InputByBounds | InputByUncertainty;
  readonly isAssumed: boolean;
  readonly path: WorksheetPath; // its box
  readonly onceKnown: number; // how well it is known once that is filled, standard
}

/** The share of the load that a no-load torque or pressure may be, at most, where it is not known. */
export const mostDragOf = ({ kind }: Pick<WorksheetTensioner, 'kind'>): number =>
  kind === 'cylinder' ? mostNoLoadShare : mostDragShare;

/** The top torque of the readings; without any, the torque that the band is tightened to now, which is then waited for. */
export function torqueAtHand(worksheet: Worksheet): Outcome<TorqueAtHand> {
  const rows = worksheetRows(worksheet);
  if (rows.ready) return ready({ torque: rows.topTorque });
  return knownInputs({ torque: usedLoad(worksheet) });
}

/** The load that the band is tightened to now, with its box. */
export const usedLoad = (worksheet: Worksheet): WantedInput => [
  `use.${loadName(worksheet.tensioner)}`,
  loadIn(worksheet, worksheet.use),
];

function dragBoxes({ kind, cylinder, ...screw }: WorksheetTensioner) {
  if (kind === 'screw')
    return {
      path: 'tensioner.dragTorque',
      typed: screw.dragTorque,
      doubtPath: 'tensioner.dragTorqueUncertainty',
      doubt: screw.dragTorqueUncertainty,
      onceKnown: dragTorqueDoubt,
    } as const;
  return {
    path: 'tensioner.cylinder.noLoadPressure',
    typed: cylinder.noLoadPressure,
    doubtPath: 'tensioner.cylinder.noLoadPressureUncertainty',
    doubt: cylinder.noLoadPressureUncertainty,
    onceKnown: noLoadPressureDoubt,
  } as const;
}

/** The no-load torque as typed, or as a range below a torque; waits for that one where nothing is typed. */
export function worksheetDrag(
  worksheet: Worksheet,
  torque: Outcome<TorqueAtHand> = torqueAtHand(worksheet),
): Outcome<DragTorque> {
  const { path, typed, doubtPath, doubt, onceKnown } = dragBoxes(worksheet.tensioner);
  const box = { path, onceKnown };
  if (typed === undefined)
    return whenReady({ torque }, ({ torque: { torque } }) => {
      const middle = (mostDragOf(worksheet.tensioner) * torque) / 2;
      return ready({ ...box, ...assumed(middle), isAssumed: true });
    });
  const known = knownInputs({
    dragTorque: [path, typed, 'notNegative'],
    uncertainty: [doubtPath, doubt, 'notNegative'],
  });
  return whenReady({ known }, ({ known: { dragTorque: value, uncertainty } }) => {
    const input = { value, standardUncertainty: uncertainty };
    return ready({ ...box, dragTorque: value, uncertainty, input, isAssumed: false });
  });
}

/** Anywhere from none to twice the middle. */
const assumed = (middle: number) => ({
  dragTorque: middle,
  uncertainty: middle / Math.sqrt(3),
  input: rectangular(middle, middle),
});

/**
 * How a load becomes thrust: a screw by its lead, a cylinder by the area that the oil presses on.
 * Units: SI only (m, m², N; a load is N·m or Pa).
 * Source: work of one turn, 2π·M = Q·l; definition of pressure.
 */
import { pistonArea } from '../../loop/hydraulic.ts';
import type { WorksheetTensioner } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { worksheetThread } from './thread.ts';

/** What turns a load into thrust. */
export type Drive =
  | { readonly kind: 'screw'; readonly lead: number } // m
  | { readonly kind: 'cylinder'; readonly pistonArea: number }; // m²

/** Thrust of a unit of load if nothing were lost: 2π/l in 1/m, or the area in m². */
export const thrustPerLoad = (drive: Drive): number =>
  drive.kind === 'screw' ? (2 * Math.PI) / drive.lead : drive.pistonArea;

/** The lead of a screw, m; a cylinder has none. */
export const leadOf = (drive: Drive): number | undefined =>
  drive.kind === 'screw' ? drive.lead : undefined;

/** The diameters of a cylinder; without a rod the oil is on the full piston. */
export interface CylinderSizes {
  readonly pistonDiameter: number; // m
  readonly rodDiameter: number; // m, 0 where it pushes
}

/** Area that the oil presses on, π·(D² − d²)/4 in m². */
export const oilArea = ({ pistonDiameter, rodDiameter }: CylinderSizes): number =>
  pistonArea({ bore: pistonDiameter }) - (Math.PI * rodDiameter ** 2) / 4;

/** The diameters; refused (`rodTooThick`) where the rod fills the cylinder. */
export function cylinderSizes({
  cylinder: { pistonDiameter, rodDiameter },
}: WorksheetTensioner): Outcome<CylinderSizes> {
  const known = knownInputs({
    pistonDiameter: ['tensioner.cylinder.pistonDiameter', pistonDiameter],
    rodDiameter: ['tensioner.cylinder.rodDiameter', rodDiameter ?? 0, 'notNegative'],
  });
  return whenReady<{ known: typeof known }, CylinderSizes>({ known }, ({ known: sizes }) =>
    sizes.rodDiameter >= sizes.pistonDiameter
      ? refused('rodTooThick', { ...sizes }, [
          'tensioner.cylinder.rodDiameter',
          'tensioner.cylinder.pistonDiameter',
        ])
      : ready(sizes),
  );
}

/** What turns the load into thrust; waits for thread or piston. */
export function worksheetDrive(tensioner: WorksheetTensioner): Outcome<{ readonly drive: Drive }> {
  if (tensioner.kind === 'cylinder')
    return whenReady({ sizes: cylinderSizes(tensioner) }, ({ sizes }) =>
      ready({ drive: { kind: 'cylinder', pistonArea: oilArea(sizes) } as const }),
    );
  return whenReady({ thread: worksheetThread(tensioner) }, ({ thread: { lead } }) =>
    ready({ drive: { kind: 'screw', lead } as const }),
  );
}

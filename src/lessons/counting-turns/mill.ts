/**
 * What a mill of the lesson `counting-turns` is: its loop, its frame, and what stands between nut and frame; and the
 * steel of all bands.
 * Units: SI.
 * Source: definition.
 */
import { bandSteel } from '../../core/assumptions.ts';
import type { Cylinder, DiscStack } from '../../core/loop.ts';
import type { Screw } from '../../core/screw.ts';

/** The steel of all bands. */
export const STEEL = { youngsModulus: bandSteel.youngsModulus } as const;

/** What stands between nut and frame. */
export type Spring =
  | { readonly kind: 'none' }
  | { readonly kind: 'discs'; readonly stack: DiscStack }
  | { readonly kind: 'coil'; readonly stiffness: number; readonly coil: Coil };

/** A coil spring as it is drawn; its sizes give its stiffness, G·d⁴/(8·D³·n). */
export interface Coil {
  readonly freeLength: number;
  readonly meanDiameter: number;
  readonly wire: number;
  readonly activeTurns: number;
}

/** One mill; both wheels are of one size and the screw or the piston pulls in line. */
export interface CountingMill {
  readonly place: string;
  readonly wheelDiameter: number;
  readonly centreDistance: number;
  readonly bodyWidth: number;
  readonly thickness: number;
  readonly frameStiffness: number;
  readonly spring: Spring;
  readonly screw?: Screw;
  readonly dragTorque?: number; // N·m
  readonly cylinder?: Cylinder;
  readonly setting: number; // Pa, the stress that this mill's band is set to
}

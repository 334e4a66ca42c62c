/**
 * A stack of disc springs: travel, force and stiffness.
 * Units: SI only (m, N, N/m). Friction between nested discs, 2 to 3 % a contact, is left out.
 * Source: springs in series and side by side, definition; the friction is from memory.
 */
import { assertAtLeast } from '../assert.ts';
import type { DiscSpring } from './disc-spring.ts';
import { discDeflection, discForce, discStiffness } from './disc-spring.ts';

/** Groups of nested discs, the groups facing each other in a row. */
export interface DiscStack {
  readonly disc: DiscSpring;
  readonly groupsInSeries: number; // ≥ 1: multiplies the travel
  readonly nestedInGroup?: number; // ≥ 1, 1 by default: multiplies the force
}

function assertStack({ groupsInSeries, nestedInGroup = 1 }: DiscStack): void {
  assertAtLeast('groupsInSeries', groupsInSeries, 1);
  assertAtLeast('nestedInGroup', nestedInGroup, 1);
}

/**
 * Travel of a stack under a force, n·s(F/m) in m for n groups of m nested.
 * @throws RangeError as `discDeflection`
 */
export function stackTravel(stack: DiscStack, force: number): number {
  const { disc, groupsInSeries, nestedInGroup = 1 } = stack;
  assertStack(stack);
  return groupsInSeries * discDeflection(disc, force / nestedInGroup);
}

/** Force of a stack pressed by a travel, m·F(x/n) in N. @throws RangeError as `discForce` */
export function stackForce(stack: DiscStack, travel: number): number {
  const { disc, groupsInSeries, nestedInGroup = 1 } = stack;
  assertStack(stack);
  return nestedInGroup * discForce(disc, travel / groupsInSeries);
}

/**
 * Tangent stiffness of a stack under a force, (m/n)·dF/ds in N/m.
 * @throws RangeError as `discDeflection`
 */
export function stackStiffness(stack: DiscStack, force: number): number {
  const { disc, groupsInSeries, nestedInGroup = 1 } = stack;
  const deflection = stackTravel(stack, force) / groupsInSeries;
  return (nestedInGroup / groupsInSeries) * discStiffness(disc, deflection);
}

/**
 * A stack of disc washers cut through its middle, set alternately, closing true to scale: each as high as its steel and
 * what is left of its cone.
 * Units: SI for the washers; drawing units otherwise.
 */
import type { DiscStack } from '../../../core/loop.ts';

interface DiscWashersProps {
  readonly x: number;
  readonly y: number;
  /** Drawing units for a metre. */
  readonly scale: number;
  readonly stack: DiscStack;
  /** How far the whole stack is pressed, m. */
  readonly travel: number;
}

/** One washer above and below the middle line; `opens` tells on which side its inner edge lies. */
function sections(
  x: number,
  y: number,
  scale: number,
  { disc }: DiscStack,
  cone: number,
  opens: boolean,
) {
  const [inner, outer] = [disc.innerDiameter, disc.outerDiameter].map((size) => (size / 2) * scale);
  const thick = disc.thickness * scale;
  const [near, far] = opens ? [x, x + cone] : [x + cone, x];
  return [1, -1].map(
    (side) =>
      `M${near} ${y + side * (inner ?? 0)}h${thick}L${far + thick} ${y + side * (outer ?? 0)}h${-thick}Z`,
  );
}

/** All washers of the stack, from the left. */
export function DiscWashers({ x, y, scale, stack, travel }: DiscWashersProps) {
  const { disc, groupsInSeries } = stack;
  const cone = (disc.coneHeight - travel / groupsInSeries) * scale;
  const step = disc.thickness * scale + cone;
  const paths = Array.from({ length: groupsInSeries }, (_, place) =>
    sections(x + place * step, y, scale, stack, cone, place % 2 === 0),
  );
  return <path class="thin shade-fill" d={paths.flat().join('')} />;
}

/** A cut face of any outline: hatched at 45 degrees inside it, with a thick edge. Drawing units. */
import { Hatch } from '../../../../figures/Hatch.tsx';

interface CutProps {
  /** Unique on the page. */
  readonly id: string;
  /** The outline, as a path. */
  readonly d: string;
  /** The rectangle around it: left, top, width, height. */
  readonly within: readonly [number, number, number, number];
  readonly line?: string;
  readonly spacing?: number;
}

/** Hatching and edge. */
export function Cut({ id, d, within, line = 'outline', spacing = 6 }: CutProps) {
  const [x, y, width, height] = within;
  return (
    <>
      <clipPath id={`${id}-edge`}>
        <path d={d} />
      </clipPath>
      <g clip-path={`url(#${id}-edge)`}>
        <Hatch id={id} x={x} y={y} width={width} height={height} spacing={spacing} />
      </g>
      <path class={line} d={d} />
    </>
  );
}

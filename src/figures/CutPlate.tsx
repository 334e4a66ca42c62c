/**
 * A plate in section, cut open where a screw goes through it: two hatched halves above and below the axis.
 * Units: drawing units.
 */
import { Hatch } from './Hatch.tsx';

interface CutPlateProps {
  /** Unique on the page: its two hatchings' ids begin with it. */
  readonly id: string;
  readonly x: number;
  readonly axis: number;
  readonly width: number;
  /** From the axis to the edge of the hole, and of one half from there on. */
  readonly hole: number;
  readonly height: number;
}

/** Both halves. */
export function CutPlate({ id, x, axis, width, hole, height }: CutPlateProps) {
  const halves = [
    { key: 'upper', y: axis - hole - height },
    { key: 'lower', y: axis + hole },
  ];
  return (
    <g>
      {halves.map(({ key, y }) => (
        <g key={key}>
          <rect class="paper-fill" x={x} y={y} width={width} height={height} />
          <Hatch id={`${id}-${key}`} x={x} y={y} width={width} height={height} />
          <rect class="outline" x={x} y={y} width={width} height={height} />
        </g>
      ))}
    </g>
  );
}

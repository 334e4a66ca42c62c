/** Section hatching at 45 degrees (convention of ISO 128) inside a rectangle, clipped to it. Drawing units. */

interface HatchProps {
  /** Unique on the page: the clip's id. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Between two lines; wider over a large face. */
  readonly spacing?: number;
}

/** Thin parallel lines at 45 degrees. */
export function Hatch({ id, x, y, width, height, spacing = 7 }: HatchProps) {
  const count = Math.ceil((width + height) / spacing);
  const lines = Array.from({ length: count }, (_, place) => {
    const start = x + (place + 0.5) * spacing;
    return `M${start} ${y}L${start - height} ${y + height}`;
  });
  return (
    <g>
      <clipPath id={id}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <path class="thin" clip-path={`url(#${id})`} d={lines.join('')} />
    </g>
  );
}

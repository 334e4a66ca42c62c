/** The two axes of a small plot, with what they count. Drawing units. */

interface AxesProps {
  readonly top: number;
  readonly bottom: number;
  readonly right: number;
  /** What counts upwards, and what to the right. */
  readonly up: string;
  readonly along: string;
}

/** Both axes from the corner at the left. */
export function Axes({ top, bottom, right, up, along }: AxesProps) {
  return (
    <>
      <path class="axis" d={`M12 ${top}V${bottom}H${right}`} />
      <text class="note" x="4" y="12">
        {up}
      </text>
      <text class="note" x={right} y={bottom + 16} text-anchor="end">
        {along}
      </text>
    </>
  );
}

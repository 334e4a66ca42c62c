/**
 * A dial whose hand makes one turn for a millimetre, with a mark at each tenth; it counts from the slack band.
 * Units: m in the reading; drawing units otherwise.
 */
const TURN = 1e-3; // m
const TENTH = Math.PI / 5;

interface DialProps {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly reading: number;
}

/** The dial, its middle at a point. */
export function Dial({ x, y, radius, reading }: DialProps) {
  const marks = Array.from({ length: 10 }, (_, tenth) => {
    const [sine, cosine] = [Math.sin(tenth * TENTH), -Math.cos(tenth * TENTH)];
    const inner = radius * 0.82;
    return `M${inner * sine} ${inner * cosine}L${radius * sine} ${radius * cosine}`;
  });
  return (
    <g transform={`translate(${x} ${y})`}>
      <circle class="outline paper-fill" r={radius} />
      <path class="thin" d={marks.join('')} />
      <g transform={`rotate(${(360 * reading) / TURN})`}>
        <path class="outline" d={`M0 ${radius * 0.2}V${-radius * 0.75}`} />
      </g>
      <circle class="ink-fill" r={3} />
    </g>
  );
}

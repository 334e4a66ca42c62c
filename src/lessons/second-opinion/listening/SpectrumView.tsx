/**
 * The spectrum of what is heard, drawn as it is heard: level over frequency, and the tones of a found series by their
 * numbers.
 * Units: Hz and dB in the spectrum; drawing units otherwise.
 */
import { linearScale } from '../../../figures/scale.ts';
import type { Heard } from './hear.ts';
import { toneOf } from './series.ts';
import { loudestIn } from './spectrum.ts';

const SIZE = { width: 360, height: 150, left: 8, right: 352, top: 20, bottom: 118 } as const;
const HIGHEST = 600; // Hz
const RANGE = 70; // dB from the loudest down
const COLUMNS = 240;
const TICKS = [0, 100, 200, 300, 400, 500];

interface SpectrumViewProps {
  readonly heard: Heard;
}

/** The loudest of each column, as a line. */
function outline({ spectrum }: Heard): string {
  const top = loudestIn(spectrum, 15, HIGHEST);
  const y = linearScale([top - RANGE, top], [SIZE.bottom, SIZE.top]);
  const width = HIGHEST / COLUMNS;
  const points = Array.from({ length: COLUMNS }, (_, column) => {
    const level = loudestIn(spectrum, column * width, (column + 1) * width);
    const x = SIZE.left + ((column + 0.5) / COLUMNS) * (SIZE.right - SIZE.left);
    return `${x.toFixed(1)} ${Math.min(SIZE.bottom, y(level)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

/** The drawing. */
export function SpectrumView({ heard }: SpectrumViewProps) {
  const x = linearScale([0, HIGHEST], [SIZE.left, SIZE.right]);
  const tones = heard.kind === 'note' ? heard.comb.tones : [];
  const shown = tones.filter(
    ({ number }) => heard.kind === 'note' && toneOf(heard.comb, number) < HIGHEST - 20,
  );
  return (
    <svg
      viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
      role="img"
      aria-label="Spectrum of what is heard: level over frequency up to 600 hertz"
    >
      <path class="axis" d={`M${SIZE.left} ${SIZE.bottom}H${SIZE.right}`} />
      {TICKS.map((tick) => (
        <g key={tick}>
          <path class="axis" d={`M${x(tick)} ${SIZE.bottom}v5`} />
          <text
            class="note"
            x={x(tick)}
            y={SIZE.bottom + 19}
            text-anchor={tick === 0 ? 'start' : 'middle'}
          >
            {tick}
          </text>
        </g>
      ))}
      <text class="note" x={SIZE.right} y={SIZE.bottom + 19} text-anchor="end">
        Hz
      </text>
      {shown.map(({ number, frequency }) => (
        <g key={number}>
          <path class="steel-thin" d={`M${x(frequency)} ${SIZE.bottom}V${SIZE.top}`} />
          <text class="steel" x={x(frequency)} y={SIZE.top - 6} text-anchor="middle">
            {number}
          </text>
        </g>
      ))}
      <path class="thin" d={outline(heard)} />
    </svg>
  );
}

/**
 * What the lines and marks of the comparison are, each with its own number.
 * Units: SI in the state; drawing units otherwise.
 */

import type { FigureState } from '../../../figures/figure.ts';
import type { Frame } from '../../../figures/stress-plot/scales.ts';
import { formatQuantity, formatRange } from '../../../units/format-quantity.ts';

const LINE = { wide: 20, narrow: 17 } as const;

interface KeyLine {
  readonly name: string;
  readonly sample: 'area' | 'hand' | 'steel' | 'bounds' | 'both' | 'reading' | 'toe';
  readonly text: string;
}

function Sample({ sample }: Pick<KeyLine, 'sample'>) {
  if (sample === 'area')
    return <rect class="axis shade-fill" x={0} y={-11} width={24} height={13} />;
  if (sample === 'reading') return <circle class="steel-fill" cx={12} cy={-5} r={3} />;
  if (sample === 'toe') return <circle class="steel-thin paper-fill" cx={12} cy={-5} r={3} />;
  if (sample === 'bounds') return <path class="steel-thin" d="M0 -5H24" stroke-dasharray="2 4" />;
  if (sample === 'both') return <path class="steel-thin" d="M0 -5H24" stroke-dasharray="9 4" />;
  return <path class={`${sample}-line`} d="M0 -5H24" />;
}

function lines({ values, system, narrow }: FigureState): readonly KeyLine[] {
  const { efficiency = 0, ownEfficiency = 0, ownLow = 0, ownHigh = 0, yorkSlope = 0 } = values;
  const { shown = 0 } = values;
  const percent = (value: number) => formatQuantity(value, 'percent', system);
  const own = narrow ? '' : ` (${formatRange(ownLow, ownHigh, 'percent', system)})`;
  const york = formatQuantity(yorkSlope, 'stressPerTorque', system);
  const fit: readonly KeyLine[] = [
    { name: 'own', sample: 'steel', text: `all readings ${percent(ownEfficiency)}${own}` },
    { name: 'bounds', sample: 'bounds', text: narrow ? 'its 95 %' : 'its 95 % ends' },
    {
      name: 'york',
      sample: 'both',
      text: narrow ? 'line, both errors' : `line through both errors, ${york}`,
    },
  ];
  const toe: KeyLine = {
    name: 'toe',
    sample: 'toe',
    text: narrow ? 'in the toe' : 'reading in the toe, in no line',
  };
  return [
    {
      name: 'area',
      sample: 'area',
      text: narrow ? 'predicted' : 'predicted, 95 %',
    },
    { name: 'hand', sample: 'hand', text: `your line ${percent(efficiency)}` },
    ...(shown === 1 ? fit : []),
    { name: 'reading', sample: 'reading', text: 'reading' },
    ...(shown === 1 && narrow ? [] : [toe]),
  ];
}

/** The key, in the empty upper left of the plot. */
export function Key({ state, frame }: { readonly state: FigureState; readonly frame: Frame }) {
  return (
    <g transform={`translate(${frame.left + 10} ${frame.top + 16})`}>
      {lines(state).map(({ name, sample, text }, place) => (
        <g
          key={name}
          transform={`translate(0 ${place * (state.narrow ? LINE.narrow : LINE.wide)})`}
        >
          <Sample sample={sample} />
          <text class={`halo ${sample === 'hand' ? 'hand' : ''}`} x={32} y={0}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}

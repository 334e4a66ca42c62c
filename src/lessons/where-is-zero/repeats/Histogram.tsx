/**
 * How far off one way puts the zero, as a histogram on the scale that both share, with its typical error in words.
 * Units: SI in the count; drawing units otherwise.
 */
import { linearScale } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { atRest } from '../toe/rest.worked.ts';
import { errorScale, repeatsLayout } from './layout.ts';
import { BIN, REACH, type Rule } from './rules.ts';
import { type Tally, typicalError } from './tally.ts';

const LINE = 19;

/** The ways, as their histograms are called. */
export const RULE_WORDS: Readonly<Record<Rule, string>> = {
  needle: 'by eye, watching the hand',
  ruler: 'by eye, with a ruler',
  classroom: 'classroom rule',
  full: 'all readings',
};

interface HistogramProps {
  readonly state: State;
  readonly tally: Tally;
  readonly rule: Rule;
  readonly place: 0 | 1;
  /** The highest bin of both histograms. */
  readonly most: number;
}

function barsPath({ state, tally, rule, place, most }: HistogramProps): string {
  const layout = repeatsLayout(state.narrow);
  const ground = layout.grounds[place];
  const x = errorScale(layout);
  const high = linearScale([0, most], [0, layout.high]);
  return tally.rules[rule].bins
    .map((count, bin) => {
      if (count === 0) return '';
      const [from, to] = [x(bin * BIN - REACH), x((bin + 1) * BIN - REACH)];
      return `M${from} ${ground}v${-high(count)}H${to}V${ground}Z`;
    })
    .join('');
}

/** What is said of a way: its name, its typical error, and how often its interval holds the truth where it has one. */
function linesOf({ state, tally, rule }: HistogramProps): readonly string[] {
  const { system, narrow } = state;
  const error = typicalError(tally, rule);
  const asStress = (error * atRest.youngsModulus) / atRest.gaugeLength;
  const two = { digits: 2 };
  const sizes = `${formatQuantity(error, 'stretch', system)}, or ${formatQuantity(asStress, 'stress', system, two)}`;
  const hasInterval = rule === 'classroom' || rule === 'full';
  const share = formatQuantity(tally.rules[rule].held / tally.repeats, 'percent', system, two);
  const held = hasInterval ? `interval holds the truth: ${share}` : 'gives no interval';
  return narrow
    ? [`${RULE_WORDS[rule]}: ${sizes}`, held]
    : [RULE_WORDS[rule], 'typical error', sizes, held];
}

/** Bars, ground and words. */
export function Histogram(props: HistogramProps) {
  const { state, rule, place } = props;
  const layout = repeatsLayout(state.narrow);
  const ground = layout.grounds[place];
  const top = ground - layout.words.up;
  return (
    <g>
      <path class={`thin ${rule === 'full' ? 'steel-wash' : 'shade-fill'}`} d={barsPath(props)} />
      <path class="axis" d={`M${layout.left} ${ground}H${layout.right}`} />
      {linesOf(props).map((line, row) => (
        <text
          key={row}
          class={row === 0 ? (rule === 'full' ? 'steel' : '') : 'note'}
          x={layout.words.x}
          y={top + row * LINE}
        >
          {line}
        </text>
      ))}
    </g>
  );
}

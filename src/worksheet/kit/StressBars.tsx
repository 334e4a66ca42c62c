/** Intervals of stress over each other on one scale, each a bar with its middle marked; the target as a line through all. */
import type { JSX } from 'preact';
import type { Span } from '../state/carried.ts';
import { part } from './part.tsx';
import { Steel } from './Result.tsx';

const WIDTH = 1000; // of a bar's drawing
const HEADROOM = 1.1;

/** What is drawn as a bar: an interval, with a middle unless it is only a range. */
type Drawn = Omit<Span, 'stress'> & Partial<Pick<Span, 'stress'>>;

/** The stress at the right end of a scale that holds these intervals and the target, Pa. */
export const scaleOf = (carried: readonly { readonly span: Drawn }[], target = 0): number =>
  HEADROOM * Math.max(1, target, ...carried.map(({ span }) => span.high));

interface Props {
  readonly span: Drawn;
  readonly most: number; // Pa at the right end
  readonly target?: number | undefined; // Pa
  readonly isFaint?: boolean | undefined; // a prediction: drawn hollow
}

/** One bar. */
export function StressBar({ span, most, target, isFaint = false }: Props): JSX.Element {
  const at = (stress: number) => (WIDTH * Math.max(0, stress)) / most;
  return (
    <svg
      class={isFaint ? 'stress-bar is-faint' : 'stress-bar'}
      viewBox={`0 0 ${WIDTH} 20`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <line class="stress-bar-scale" x2={WIDTH} y1="19" y2="19" />
      <rect x={at(span.low)} y="4" width={at(span.high) - at(span.low)} height="12" />
      {span.stress !== undefined && (
        <line class="stress-bar-middle" x1={at(span.stress)} x2={at(span.stress)} y1="1" y2="19" />
      )}
      {target !== undefined && (
        <line class="stress-bar-target" x1={at(target)} x2={at(target)} y2="20" />
      )}
    </svg>
  );
}

/** One of several bars: what says so, and what it says. */
export interface SaidSpan {
  readonly says: string;
  readonly span: Drawn;
  readonly isFaint?: boolean | undefined;
}

interface BarsProps {
  readonly bars: readonly SaidSpan[];
  readonly target?: number | undefined; // Pa
}

/** Bars over each other on one scale, each with its words and its range; the target as a line through all. */
export const StressBars = part<BarsProps>(({ bars, target }, sheet) => {
  const shown = sheet.shown();
  const most = scaleOf(bars, target);
  return (
    <div class="bars">
      {bars.map(({ says, span, isFaint }, at) => (
        <div class="bar-row" key={at}>
          <p>
            {says} <Steel>{shown.range(Math.max(0, span.low), span.high, 'stress')}</Steel>
          </p>
          <StressBar span={span} most={most} target={target} isFaint={isFaint} />
        </div>
      ))}
      {target !== undefined && (
        <p class="bar-target">Dashed: the target, {shown.quantity(target, 'stress')}</p>
      )}
    </div>
  );
});

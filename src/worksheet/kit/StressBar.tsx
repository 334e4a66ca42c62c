/** An interval of stress as a bar on a scale, with its middle and the target marked. */
import type { JSX } from 'preact';
import type { Span } from '../state/carried.ts';

const WIDTH = 1000; // of a bar's drawing
const HEADROOM = 1.1;

/** What is drawn as a bar: an interval, with a middle unless it is only a range. */
export type Drawn = Omit<Span, 'stress'> & Partial<Pick<Span, 'stress'>>;

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

/** A matrix code in black on white, whatever the theme: a camera needs it so. */
import type { JSX } from 'preact';
import type { Code } from './code.ts';

interface Props {
  readonly code: Code;
  /** What it is the code of, for who does not see it. */
  readonly label: string;
}

/** The code. */
export const MatrixCode = ({ code: { size, path }, label }: Props): JSX.Element => (
  <svg class="matrix-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
    <rect width={size} height={size} />
    <path d={path} />
  </svg>
);

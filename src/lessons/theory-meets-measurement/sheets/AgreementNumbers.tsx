/**
 * The two agreement numbers in words: the first prediction's, and the one of the reader's own line.
 * Units: drawing units; the numbers have none.
 */
import { agreementText } from './AgreementScale.tsx';

interface AgreementNumbersProps {
  readonly x: number;
  /** Height of the last of the three lines, or of the only one. */
  readonly y: number;
  readonly agreement: number;
  readonly mine: number;
}

const LINE = 18;
const INDENT = 18;

/** Heading, diamond with the first prediction's number, blue tick with the number of the reader's line. */
export function AgreementNumbers({ x, y, agreement, mine }: AgreementNumbersProps) {
  return (
    <g>
      <text x={x} y={y - 2 * LINE}>
        agreement number
      </text>
      <path class="ink-fill" d={`M${x + 6} ${y - LINE - 12}l6 7l-6 7l-6 -7Z`} />
      <text x={x + INDENT} y={y - LINE}>
        prediction {agreementText(agreement)}
      </text>
      <path class="hand-line" d={`M${x + 6} ${y - 12}V${y + 1}`} />
      <text class="hand" x={x + INDENT} y={y}>
        your line {agreementText(mine)}
      </text>
    </g>
  );
}

/** The same on one line, without marks. */
export function AgreementLine({ x, y, agreement, mine }: AgreementNumbersProps) {
  return (
    <text x={x} y={y}>
      agreement number {agreementText(agreement)},{' '}
      <tspan class="hand-fill">your line {agreementText(mine)}</tspan>
    </text>
  );
}

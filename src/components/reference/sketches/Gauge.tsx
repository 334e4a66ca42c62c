/**
 * The gauge on a piece of the band: two clamps, the bar between them, the dial; dashed, where a pull takes the far
 * clamp. Drawing units.
 */
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [BAND, NEAR, FAR, MOVED] = [64, 34, 150, 158]; // inner edges of the clamps
const DIAL = 106;

/** The dial on the bar. */
function Dial({ sheet }: SketchProps<'gauge'>) {
  const line = sheet.has('dial-indicator') ? 'outline' : 'construction';
  return (
    <>
      <circle class={`${line} paper-fill`} cx={DIAL} cy="32" r="18" />
      <path class={line} d={`M${DIAL} 18v4m14 10h-4m-24 0h4m10 14v-4`} />
      <path class="steel-line" d={`M${DIAL} 32l9-10`} />
    </>
  );
}

/** Band, gauge, and what it reads. */
export function Gauge({ sheet }: SketchProps<'gauge'>) {
  const plain = sheet.has('dial-indicator') ? 'construction' : 'outline';
  const clamp = sheet.has('clamp') ? 'limit' : plain;
  const length = { words: 'gauge length', part: 'gauge-length' } as const;
  const stretch = { words: 'stretch', part: 'stretch' } as const;
  // A named clamp takes the room on the left of the dial.
  const beside = sheet.has('clamp') ? ({ x: 132 } as const) : ({ x: 80, anchor: 'end' } as const);
  return (
    <g>
      <path class="construction shade-fill" d="M4 64H196c4 4-4 8 0 12H4c-4-4 4-8 0-12z" />
      <path class="construction" d={`M${NEAR} 52H${FAR}`} />
      {sheet.has('stretch') && <path class="hidden-edge" d={`M${MOVED} ${BAND - 16}h10v34h-10z`} />}
      {[NEAR - 10, FAR].map((x) => (
        <rect key={x} class={`${clamp} paper-fill`} x={x} y={BAND - 16} width="10" height="34" />
      ))}
      <Dial sheet={sheet} />
      <Name sheet={sheet} part="dial-indicator" words="dial indicator" y={28} {...beside} />
      <Name sheet={sheet} part="clamp" words="clamp" x={46} y={24} leader="M50 28L34 46" />
      <Level sheet={sheet} {...length} from={NEAR} to={FAR} edge={BAND + 20} y={104} />
      <Level
        sheet={sheet}
        {...stretch}
        from={FAR}
        to={MOVED}
        edge={BAND - 18}
        y={32}
        named="right"
      />
    </g>
  );
}

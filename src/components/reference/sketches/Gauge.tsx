/** The gauge on a piece of the band: two clamps, the bar between them, the dial; dashed, where a pull takes the far clamp. Drawing units. */
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [BAND, NEAR, FAR] = [64, 40, 164]; // inner edges of the clamps

/** Band, gauge, and what it reads. */
export function Gauge({ sheet }: SketchProps<'gauge'>) {
  const dial = sheet.has('dial-indicator') ? 'outline' : 'construction';
  const clamp = sheet.has('clamp')
    ? 'limit'
    : sheet.has('dial-indicator')
      ? 'construction'
      : 'outline';
  const length = { words: 'gauge length', part: 'gauge-length' } as const;
  return (
    <g>
      <path class="construction shade-fill" d="M6 64H210c4 4-4 8 0 12H6c-4-4 4-8 0-12z" />
      <path class="construction" d={`M${NEAR} 52H${FAR}`} />
      {[NEAR - 10, FAR].map((x) => (
        <rect key={x} class={`${clamp} paper-fill`} x={x} y={BAND - 16} width="10" height="34" />
      ))}
      <circle class={`${dial} paper-fill`} cx="142" cy="32" r="18" />
      <path class={dial} d="M142 18v4M156 32h-4M128 32h4M142 46v-4" />
      <path class="steel-line" d="M142 32l9-10" />
      <Name
        sheet={sheet}
        part="dial-indicator"
        words="dial indicator"
        x={116}
        y={24}
        anchor="end"
      />
      <Name sheet={sheet} part="clamp" words="clamp" x={62} y={24} leader="M64 28L38 48" />
      <Level sheet={sheet} {...length} from={NEAR} to={FAR} edge={BAND + 20} y={104} />
      {sheet.has('stretch') && (
        <>
          <path class="hidden-edge" d={`M${FAR + 8} ${BAND - 20}h10v42h-10z`} />
          <Level
            sheet={sheet}
            part="stretch"
            words="stretch"
            from={FAR}
            to={FAR + 8}
            edge={BAND - 18}
            y={36}
          />
        </>
      )}
    </g>
  );
}

/** The rim of a wheel cut across, with its tire and the band on it; the curves are drawn much stronger. Drawing units. */
import { Cut } from './kit/Cut.tsx';
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

/** Rim, tire, band. */
export function Rim({ sheet }: SketchProps<'rim'>) {
  const isCurled = sheet.has('curled-band');
  const band = isCurled
    ? 'M44 30C76 50 112 50 144 30l2 5C112 56 76 56 42 35z'
    : 'M40 49Q94 31 148 49l-1 5Q94 37 41 54z';
  return (
    <g>
      <Cut
        id={sheet.id}
        d="M34 74Q94 54 154 74V100H34z"
        within={[34, 60, 120, 40]}
        line={sheet.has('crown') ? 'limit' : 'outline'}
        spacing={8}
      />
      <path
        class={sheet.has('tire') ? 'limit shade-fill' : 'outline shade-fill'}
        d="M34 74Q94 54 154 74V62Q94 42 34 62z"
      />
      <path class={isCurled ? 'steel-line steel-wash' : 'construction paper-fill'} d={band} />
      <path class="centre" d="M94 16V112" />
      {sheet.has('crown') && <path class="hidden-edge" d="M20 64H168" />}
      <Name sheet={sheet} part="crown" words="crown" x={172} y={84} leader="M169 80L128 67" />
      <Name sheet={sheet} part="tire" words="tire" x={172} y={62} leader="M169 60L146 66" />
      <Name sheet={sheet} part="curled-band" words="edges lift" x={156} y={32} />
    </g>
  );
}

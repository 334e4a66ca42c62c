/** Along the cut: the band end on in its slot in the wood, teeth bent left and right. Drawing units. */
import { Cut } from './kit/Cut.tsx';
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const GRAIN =
  'M36 36c3 22-2 42 0 62M60 36c-4 24 3 44 0 62M136 36c4 24-3 44 0 62M160 36c-3 22 2 42 0 62';

/** Slot, band, teeth. */
export function CutSlot({ sheet }: SketchProps<'cut-slot'>) {
  const teeth = sheet.has('set') ? 'limit' : 'outline';
  return (
    <g>
      <path class="construction" d={`M16 36v62M180 36v62${GRAIN}`} />
      <path class="outline" d="M16 36H80V94H116V36H180" />
      <Cut id={sheet.id} d="M90 6H106V66H90z" within={[90, 6, 16, 60]} spacing={5} />
      <path class={`${teeth} paper-fill`} d="M90 66L82 92L98 66M106 66L114 92L98 66" />
      <Level
        sheet={sheet}
        part="kerf"
        words="kerf"
        from={80}
        to={116}
        edge={34}
        y={22}
        named="right"
      />
      <Name sheet={sheet} part="set" words="set" x={190} y={84} leader="M113 86L186 80" />
    </g>
  );
}

/** Along the cut: the band end on in its slot in the wood, teeth bent left and right. Drawing units. */
import { Cut } from './kit/Cut.tsx';
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

/** Slot, band, teeth. */
export function CutSlot({ sheet }: SketchProps<'cut-slot'>) {
  const teeth = sheet.line('set');
  return (
    <g>
      <path class={sheet.has('kerf') ? 'limit' : 'outline'} d="M82 40V94H114V40" />
      <path class="outline" d="M24 40H82M114 40H172" />
      <path
        class="construction"
        d="M24 40v62M172 40v62M40 40c3 22-2 40 0 62M62 40c-4 24 3 42 0 62M134 40c4 24-3 42 0 62M156 40c-3 22 2 40 0 62"
      />
      <Cut id={sheet.id} d="M92 8H104V68H92z" within={[92, 8, 12, 60]} spacing={5} />
      <path class={`${teeth} paper-fill`} d="M92 68L83 92 104 68M104 68L113 92 92 68" />
      <Level sheet={sheet} part="kerf" words="kerf" from={82} to={114} edge={38} y={26} />
      <Name sheet={sheet} part="set" words="set" x={186} y={86} leader="M112 88L182 82" />
    </g>
  );
}

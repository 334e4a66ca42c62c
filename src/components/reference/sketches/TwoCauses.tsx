/** Two independent uncertainties and what they make together: the sides of a right triangle and its long side. Drawing units. */

import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

/** The triangle. */
export function TwoCauses({ sheet }: SketchProps<'two-causes'>) {
  return (
    <g>
      <path class={sheet.has('each') ? 'outline' : 'construction'} d="M20 88H150V28" />
      <path class="thin" d="M140 88v-10h10" />
      <path class="limit" d="M20 88L150 28" />
      <Name sheet={sheet} part="together" words="together" x={72} y={46} anchor="end" />
      <Name sheet={sheet} part="each" words="one cause" x={85} y={106} anchor="middle" />
      <Name sheet={sheet} part="each" words="another" x={158} y={62} />
    </g>
  );
}

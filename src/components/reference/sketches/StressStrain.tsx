/** Stress over strain for a steel: the straight part that springs back, the limit, the part that stays. Drawing units. */
import { Axes } from './kit/Axes.tsx';
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

/** Axes, curve and what is marked on it. */
export function StressStrain({ sheet }: SketchProps<'stress-strain'>) {
  return (
    <g>
      <Axes top={22} bottom={100} right={212} up="stress" along="strain" />
      <path class="steel-line" d="M12 100L92 36" />
      <path
        class={sheet.has('yield') ? 'steel-line' : 'steel-thin'}
        d="M92 36C106 25 130 20 178 17"
      />
      {sheet.has('youngs-modulus') && <path class="thin" d="M42 76H72V52" />}
      <Name sheet={sheet} part="youngs-modulus" words="Young’s modulus" x={78} y={68} />
      {sheet.has('elastic-limit') && (
        <>
          <path class="hidden-edge" d="M12 36H92" />
          <circle class="steel-fill" cx="92" cy="36" r="4" />
        </>
      )}
      <Name sheet={sheet} part="elastic-limit" words="elastic limit" x={102} y={50} />
      {sheet.has('yield') && <path class="hidden-edge" d="M150 19L49 100" />}
      <Name sheet={sheet} part="yield" words="this stays" x={31} y={116} anchor="middle" />
      {sheet.has('yield') && <path class="limit" d="M12 100H49" />}
    </g>
  );
}

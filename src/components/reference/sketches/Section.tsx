/** The band cut across: the body hatched, a tooth beyond it that carries nothing. Thickness drawn larger. Drawing units. */
import { Cut } from './kit/Cut.tsx';
import { Name } from './kit/Name.tsx';
import { Level, Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

/** Section with its two sizes. */
export function Section({ sheet }: SketchProps<'section'>) {
  const body = { words: 'body width', part: 'body-width' } as const;
  return (
    <g>
      <path class="construction shade-fill" d="M136 27l26 7v6l-26 7z" />
      <Cut
        id={sheet.id}
        d="M8 27H136V47H8z"
        within={[8, 27, 128, 20]}
        line={sheet.has('area') ? 'limit' : 'outline'}
      />
      <Name sheet={sheet} part="area" words="this carries" x={72} y={14} anchor="middle" />
      <Level sheet={sheet} {...body} from={8} to={136} edge={50} y={72} />
      <Upright
        sheet={sheet}
        part="thickness"
        words="t"
        from={27}
        to={47}
        edge={138}
        x={178}
        isOutside
      />
    </g>
  );
}

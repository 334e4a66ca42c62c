/** Three springs in a row between a wall and a pull: the same force in each, the softest longest. Drawing units. */
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const ROW = 40;
const SPRINGS = [
  { part: 'band-stiffness', words: 'band', from: 16, to: 62 },
  { part: 'frame-stiffness', words: 'frame', from: 62, to: 98 },
  { part: 'spring-stiffness', words: 'spring', from: 98, to: 170 },
] as const;

/** A coil from one place to another, in zigzag. */
function coil(from: number, to: number): string {
  const step = (to - from - 12) / 8;
  const zigzag = Array.from({ length: 7 }, (_, place) => `l${step} ${place % 2 ? 20 : -20}`).join(
    '',
  );
  return `M${from} ${ROW}h6l${step / 2} 10${zigzag}L${to - 6} ${ROW}h6`;
}

/** Wall, springs, pull. */
export function SpringRow({ sheet }: SketchProps<'spring-row'>) {
  return (
    <g>
      <path class="outline" d="M16 18V62" />
      <path class="thin" d="M16 24l-8 8M16 34l-8 8M16 44l-8 8M16 54l-8 8" />
      {SPRINGS.map(({ part, words, from, to }) => (
        <g key={part}>
          <path class="outline" d={coil(from, to)} />
          <Name
            sheet={sheet}
            part={part}
            words={words}
            x={(from + to) / 2}
            y={78}
            anchor="middle"
          />
        </g>
      ))}
      {SPRINGS.slice(1).map(({ from }) => (
        <circle key={from} class="ink-fill" cx={from} cy={ROW} r="3" />
      ))}
      {sheet.has('wheel-force') && <ForceArrow x={170} y={ROW} length={44} ink="ink" />}
      <Name sheet={sheet} part="wheel-force" words="force" x={216} y={ROW - 12} anchor="end" />
      {sheet.has('movement') && <path class="hidden-edge" d="M148 24V58" />}
      <Level
        sheet={sheet}
        part="movement"
        words="movement"
        from={148}
        to={170}
        edge={62}
        y={76}
        named="left"
      />
    </g>
  );
}

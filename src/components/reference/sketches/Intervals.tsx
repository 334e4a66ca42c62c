/** Two results with their uncertainties, one over the other: what lies between them against how far each reaches. Drawing units. */
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

interface BarProps {
  readonly x: number;
  readonly y: number;
  readonly reach: number;
  readonly line: string;
}

function Bar({ x, y, reach, line }: BarProps) {
  return (
    <>
      <path
        class={line}
        d={`M${x - reach} ${y}H${x + reach}M${x - reach} ${y - 6}v12M${x + reach} ${y - 6}v12`}
      />
      <circle class="ink-fill" cx={x} cy={y} r="4" />
    </>
  );
}

const [FIRST, SECOND] = [88, 126];

/** Both bars. */
export function Intervals({ sheet }: SketchProps<'intervals'>) {
  const line = sheet.has('error-bar') ? 'limit' : 'outline';
  const reach = { words: '±', part: 'expanded-uncertainty' } as const;
  return (
    <g>
      <Bar x={FIRST} y={34} reach={56} line={line} />
      <Bar x={SECOND} y={76} reach={36} line={line} />
      <Name sheet={sheet} part="error-bar" words="error bar" x={FIRST} y={20} anchor="middle" />
      <Level sheet={sheet} {...reach} from={FIRST} to={FIRST + 56} edge={28} y={18} />
      {sheet.has('difference') && (
        <>
          <Level sheet={sheet} {...reach} from={SECOND} to={SECOND + 36} edge={82} y={102} />
          <path class="axis" d={`M${FIRST} 38V64M${SECOND} 72V56`} />
        </>
      )}
      <Level sheet={sheet} part="difference" words="difference" from={FIRST} to={SECOND} y={60} />
    </g>
  );
}

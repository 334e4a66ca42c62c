/** A span of band between two guides: swinging after a pluck, or pushed aside in its middle. Movement drawn larger. Drawing units. */

import { ArrowHead } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Name } from './kit/Name.tsx';
import { Level, Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [LEFT, RIGHT, REST] = [34, 174, 46];

/** The span swinging: where it turns back on either side. */
function Swing() {
  return (
    <>
      <path class="steel-line" d={`M${LEFT} ${REST}C80 18 128 18 ${RIGHT} ${REST}`} />
      <path class="hidden-edge" d={`M${LEFT} ${REST}C80 74 128 74 ${RIGHT} ${REST}`} />
    </>
  );
}

/** The span pushed aside. */
function Pushed() {
  return (
    <>
      <path class="steel-line" d={`M${LEFT} ${REST}L104 66L${RIGHT} ${REST}`} />
      <path class="outline" d="M104 8V56" />
      <ArrowHead x={104} y={64} angle={90} />
    </>
  );
}

/** Guides, span, movement. */
export function SwungSpan({ sheet }: SketchProps<'swung-span'>) {
  const isPushed = sheet.has('push');
  return (
    <g>
      <path class="construction" d={`M${LEFT - 26} ${REST}H${RIGHT + 26}`} />
      {isPushed ? <Pushed /> : <Swing />}
      {[LEFT, RIGHT].map((x) => (
        <circle key={x} class="outline paper-fill" cx={x} cy={REST} r="5" />
      ))}
      {sheet.has('strand-force') && <ForceArrow x={LEFT - 8} y={REST} length={-24} ink="steel" />}
      {sheet.has('strand-force') && <ForceArrow x={RIGHT + 8} y={REST} length={24} ink="steel" />}
      <Name sheet={sheet} part="strand-force" words="" x={RIGHT + 22} y={REST - 8} />
      <Name sheet={sheet} part="frequency" words="" x={104} y={16} anchor="middle" />
      <Name sheet={sheet} part="push" words="" x={112} y={18} />
      <Upright
        sheet={sheet}
        part="deflection"
        words=""
        from={REST}
        to={66}
        edge={106}
        x={140}
        named="above"
      />
      <Level sheet={sheet} part="span" words="span" from={LEFT} to={RIGHT} edge={REST + 8} y={96} />
    </g>
  );
}

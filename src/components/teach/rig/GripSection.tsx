/** A grip in section, larger: the strip between two plates, a bolt on either side of it, no hole in the strip. */
import { Dimension } from '../../../figures/dimension.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { BUILD, RIG } from '../../../models/mills/classroom-rig.ts';
import type { RigLayout } from './layout.ts';

const BOLT = 0.022; // m from the axis

interface SectionProps {
  readonly idPrefix: string;
  readonly layout: RigLayout;
  /** A length in the reader's unit. */
  readonly say: (name: 'width' | 'gripWidth') => string;
}

/** The section, its name above it. */
export function GripSection({ idPrefix, layout, say }: SectionProps) {
  const { perMeterInSection: scale, section } = layout;
  const { x, y } = section;
  const half = (BUILD.gripWidth / 2) * scale;
  const plate = BUILD.gripThickness * scale;
  const strip = 5; // drawn thicker than it is
  const [shank, head, nut] = [0.004 * scale, 0.0065 * scale, 0.006 * scale];
  const top = y - strip / 2 - plate;
  const bottom = y + strip / 2 + plate;
  return (
    <g>
      <text class="halo" x={x} y={top - 42} text-anchor="middle">
        A–A
      </text>
      {[top, y + strip / 2].map((edge, place) => (
        <g key={edge}>
          <Hatch
            id={`${idPrefix}-plate-${place}`}
            x={x - half}
            y={edge}
            width={2 * half}
            height={plate}
            spacing={6}
          />
          <rect class="outline" x={x - half} y={edge} width={2 * half} height={plate} />
        </g>
      ))}
      <rect
        class="steel-fill"
        x={x - (RIG.width / 2) * scale}
        y={y - strip / 2}
        width={RIG.width * scale}
        height={strip}
      />
      {[-BOLT, BOLT].map((across) => (
        <g key={across}>
          <path
            class="outline paper-fill"
            d={`M${x + across * scale - shank} ${top}V${bottom}h${2 * shank}V${top}Z`}
          />
          <path
            class="outline paper-fill"
            d={`M${x + across * scale - head} ${top}v${-nut}h${2 * head}v${nut}ZM${x + across * scale - head} ${bottom}v${nut}h${2 * head}v${-nut}Z`}
          />
        </g>
      ))}
      <Dimension
        from={x - (RIG.width / 2) * scale}
        to={x + (RIG.width / 2) * scale}
        y={top - 16}
        edge={y - strip / 2}
        text={say('width')}
      />
      <Dimension
        from={x - half}
        to={x + half}
        y={bottom + 34}
        edge={bottom}
        text={say('gripWidth')}
      />
    </g>
  );
}

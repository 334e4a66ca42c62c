/**
 * A piece of the upper strand seen on its flank, broken off at both ends, teeth downwards.
 * Units: drawing units; sizes of the band in m.
 */
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import type { RigLayout } from './layout.ts';

const PITCH = 0.022; // m, of an invented band
const LEAN = 0.3; // of the pitch, from gullet to tip

/** The strand. */
export function Strand({ layout }: { readonly layout: RigLayout }) {
  const { width, scale, band } = layout;
  const half = (OTTERSLEIGH.bodyWidth / 2) * scale;
  const deep = (OTTERSLEIGH.widthOverTeeth - OTTERSLEIGH.bodyWidth) * scale;
  const pitch = PITCH * scale;
  const count = Math.floor(width / pitch);
  const start = (width - count * pitch) / 2;
  const end = start + count * pitch;
  const tooth = `l${-LEAN * pitch} ${deep}L`;
  const teeth = Array.from({ length: count }, (_, place) => {
    const root = end - place * pitch;
    return `${tooth}${root - pitch} ${band + half}`;
  });
  const wave = (down: number) => `q${4 * down} ${(down * half) / 2} 0 ${down * half}`;
  return (
    <path
      class="outline shade-fill"
      d={`M${start} ${band - half}H${end}${wave(1)}q-4 ${half / 2} 0 ${half}${teeth.join('')}${wave(-1)}q4 ${-half / 2} 0 ${-half}Z`}
    />
  );
}

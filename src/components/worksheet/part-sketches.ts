/** The small dimensioned drawing beside each part of the sheet: what to measure, and where. Drawn by the build. */
import { getCollection } from 'astro:content';
import { type ComponentType, h } from 'preact';
import { render } from 'preact-render-to-string';
import type { PartId } from '../../worksheet/folds/sheet-parts.ts';
import type { SketchName } from '../reference/sketch-parts.ts';
import { heightOf, SKETCH_WIDTH, SKETCHES } from '../reference/sketches/all.ts';
import { type SketchSheet, sketchSheet } from '../reference/sketches/kit/sheet.ts';

interface Drawn {
  readonly of: SketchName;
  readonly marks: readonly string[];
}

const DRAWN: Partial<Readonly<Record<PartId, Drawn>>> = {
  start: { of: 'section', marks: ['body-width', 'thickness'] },
  tensioner: { of: 'screw', marks: ['torque', 'collar', 'thrust'] },
  mill: { of: 'mill', marks: ['wheel-diameter', 'centre-distance'] },
  rig: { of: 'gauge', marks: ['gauge-length', 'clamp', 'dial-indicator'] },
  readings: { of: 'readings', marks: ['toe', 'zero'] },
  compare: { of: 'intervals', marks: ['expanded-uncertainty', 'difference'] },
  setting: { of: 'setting', marks: ['set-torque', 'target-stress'] },
};

const EITHER_LOAD = 'load'; // of a screw or of a cylinder: the build does not know which the reader has

/** The drawings as SVG, by their part. */
export async function partSketches(): Promise<Readonly<Record<string, string>>> {
  const symbols = Object.fromEntries(
    (await getCollection('symbols')).map(({ id, data }) => [id, data]),
  );
  const svgOf = (part: string, { of, marks }: Drawn): string => {
    const id = `sketch-${part}`;
    const sheet = sketchSheet({ id, marks, symbols, inLetters: false, load: EITHER_LOAD });
    const { Drawing, shows } = SKETCHES[of];
    const drawing = h(Drawing as ComponentType<{ sheet: SketchSheet }>, { sheet });
    const viewBox = `0 0 ${SKETCH_WIDTH} ${heightOf(of, marks)}`;
    return render(h('svg', { viewBox, role: 'img', 'aria-label': `Drawing: ${shows}` }, drawing));
  };
  return Object.fromEntries(
    Object.entries(DRAWN).map(([part, drawn]) => [part, svgOf(part, drawn)]),
  );
}

/** A built sheet with the drawings in their places. */
export const withSketches = (sheet: string, sketches: Readonly<Record<string, string>>): string =>
  sheet.replaceAll(
    /(<div class="sketch part-sketch" data-sketch-of="(\w+)">)(?=<\/div>)/g,
    (place, _, part: string) => `${place}${sketches[part] ?? ''}`,
  );

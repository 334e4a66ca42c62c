/** Where the parts of the section's figure stand, on a wide page and on a phone, in units of the drawing. */

/** One layout; `perMetre` is the scale of both views. */
export interface SectionLayout {
  readonly width: number;
  readonly height: number;
  readonly perMetre: number;
  readonly left: number;
  /** The view on the flank: its top and bottom. */
  readonly top: number;
  readonly bottom: number;
  /** The section below it: its upper face. */
  readonly section: number;
  /** The wheel that two strands pull at: its centre and radius, and drawing units for a newton. */
  readonly wheel: { readonly x: number; readonly y: number; readonly radius: number };
  readonly perNewton: number;
}

const WIDE: SectionLayout = {
  width: 880,
  height: 446,
  perMetre: 8800,
  left: 60,
  top: 46,
  bottom: 326,
  section: 392,
  wheel: { x: 660, y: 170, radius: 58 },
  perNewton: 110 / 8000,
};

const NARROW: SectionLayout = {
  width: 360,
  height: 366,
  perMetre: 5200,
  left: 14,
  top: 30,
  bottom: 172,
  section: 218,
  wheel: { x: 160, y: 302, radius: 32 },
  perNewton: 90 / 8000,
};

/** The layout for a width of screen. */
export function sectionLayout(narrow: boolean): SectionLayout {
  return narrow ? NARROW : WIDE;
}

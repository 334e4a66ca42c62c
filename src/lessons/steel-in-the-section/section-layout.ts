/** Where the parts of the section's figure are, on a wide page and on a phone, in units of the drawing. */

/** One layout; `perMetre` is the scale of both views and of the rod beside them. */
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
  /** The rod with as much steel: its axis, and the level on which it rests. */
  readonly rod: { readonly x: number; readonly floor: number };
}

const WIDE: SectionLayout = {
  width: 880,
  height: 432,
  perMetre: 8800,
  left: 20,
  top: 46,
  bottom: 306,
  section: 376,
  rod: { x: 650, floor: 306 },
};

const NARROW: SectionLayout = {
  width: 360,
  height: 258,
  perMetre: 4200,
  left: 8,
  top: 34,
  bottom: 158,
  section: 212,
  rod: { x: 294, floor: 158 },
};

/** The layout for a width of screen. */
export function sectionLayout(narrow: boolean): SectionLayout {
  return narrow ? NARROW : WIDE;
}

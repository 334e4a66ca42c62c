/**
 * Every drawing of the reference: what draws it, how high it is, what it shows in words, and the lesson whose figure
 * shows it moving.
 * Units: drawing units, pixels on a page of usual lettering.
 */
import type { ComponentType } from 'preact';
import type { SketchName, SketchPart } from '../sketch-parts.ts';
import { BandEdge } from './BandEdge.tsx';
import { BentBand } from './BentBand.tsx';
import { CutSlot } from './CutSlot.tsx';
import { DiscWasher } from './DiscWasher.tsx';
import { FrictionCone } from './FrictionCone.tsx';
import { Gauge } from './Gauge.tsx';
import { HalfLoop } from './HalfLoop.tsx';
import { Intervals } from './Intervals.tsx';
import type { SketchProps } from './kit/sheet.ts';
import { Mill } from './Mill.tsx';
import { Readings } from './Readings.tsx';
import { Rim } from './Rim.tsx';
import { Screw } from './Screw.tsx';
import { Section } from './Section.tsx';
import { Setting } from './Setting.tsx';
import { SpringRow } from './SpringRow.tsx';
import { StressStrain } from './StressStrain.tsx';
import { SwungSpan } from './SwungSpan.tsx';
import { ThreadForm } from './ThreadForm.tsx';
import { TwoCauses } from './TwoCauses.tsx';
import { UnrolledTurn } from './UnrolledTurn.tsx';
import { WarmBand } from './WarmBand.tsx';

/** The width of every sheet. */
export const SKETCH_WIDTH = 220;

/** One drawing. */
export interface Sketch<Name extends SketchName> {
  readonly Drawing: ComponentType<SketchProps<Name>>;
  readonly height: number;
  /** What is dimensioned under the drawing, and how high the sheet is then. */
  readonly under?: { readonly parts: readonly SketchPart<Name>[]; readonly height: number };
  /** For who listens: what is drawn. */
  readonly shows: string;
  /** Where it moves, if a lesson that is written has a figure of it. */
  readonly lesson?: string;
}

/** By name. */
export const SKETCHES: { readonly [Name in SketchName]: Sketch<Name> } = {
  'band-edge': {
    Drawing: BandEdge,
    height: 74,
    under: { parts: ['gullet'], height: 98 },
    shows: 'a piece of the band seen on its flank',
    lesson: 'steel-in-the-section',
  },
  'bent-band': { Drawing: BentBand, height: 118, shows: 'the band bent round a wheel' },
  'cut-slot': {
    Drawing: CutSlot,
    height: 104,
    shows: 'the band end on in its cut',
    lesson: 'steel-in-the-section',
  },
  'disc-washer': {
    Drawing: DiscWasher,
    height: 108,
    shows: 'a dished washer cut through its middle',
    lesson: 'counting-turns',
  },
  'friction-cone': {
    Drawing: FrictionCone,
    height: 116,
    shows: 'a block on a ramp with its cone of friction',
    lesson: 'screw-takes-its-cut',
  },
  gauge: {
    Drawing: Gauge,
    height: 86,
    under: { parts: ['gauge-length'], height: 108 },
    shows: 'the gauge on a piece of the band',
    lesson: 'stiff-spring',
  },
  'half-loop': {
    Drawing: HalfLoop,
    height: 108,
    shows: 'the movable wheel and the two strands that pull on it',
    lesson: 'handle-to-band',
  },
  intervals: {
    Drawing: Intervals,
    height: 84,
    under: { parts: ['difference'], height: 108 },
    shows: 'two results with their error bars',
    lesson: 'theory-meets-measurement',
  },
  mill: {
    Drawing: Mill,
    height: 84,
    under: { parts: ['span', 'wheel-diameter'], height: 104 },
    shows: 'the wheels, the band and the tensioner of a mill',
    lesson: 'handle-to-band',
  },
  readings: {
    Drawing: Readings,
    height: 132,
    shows: 'readings of the dial as the load grows, and a line through the upper ones',
    lesson: 'theory-meets-measurement',
  },
  rim: { Drawing: Rim, height: 116, shows: 'a wheel’s rim cut across, with the band on it' },
  screw: {
    Drawing: Screw,
    height: 118,
    shows: 'the tensioner’s screw in its plate',
    lesson: 'screw-takes-its-cut',
  },
  section: {
    Drawing: Section,
    height: 52,
    under: { parts: ['body-width'], height: 78 },
    shows: 'the band cut across',
    lesson: 'steel-in-the-section',
  },
  setting: {
    Drawing: Setting,
    height: 130,
    shows: 'stress over torque, with the top reading and the target',
    lesson: 'theory-meets-measurement',
  },
  'spring-row': {
    Drawing: SpringRow,
    height: 88,
    shows: 'band, frame and spring as three springs in a row',
    lesson: 'counting-turns',
  },
  'stress-strain': {
    Drawing: StressStrain,
    height: 122,
    shows: 'stress over strain',
    lesson: 'stiff-spring',
  },
  'swung-span': {
    Drawing: SwungSpan,
    height: 108,
    shows: 'a span of band between two guides, moved sideways',
  },
  'thread-form': {
    Drawing: ThreadForm,
    height: 116,
    shows: 'a thread cut along its axis',
    lesson: 'screw-takes-its-cut',
  },
  'two-causes': {
    Drawing: TwoCauses,
    height: 112,
    shows: 'two uncertainties as the sides of a right triangle',
  },
  'unrolled-turn': {
    Drawing: UnrolledTurn,
    height: 88,
    under: { parts: ['one-turn'], height: 110 },
    shows: 'one turn of a thread, unrolled to a ramp',
    lesson: 'screw-takes-its-cut',
  },
  'warm-band': { Drawing: WarmBand, height: 92, shows: 'a band that grows as it warms' },
};

/** How high the sheet of a drawing is, with what is marked. */
export function heightOf(name: SketchName, marks: readonly string[]): number {
  const { height, under } = SKETCHES[name];
  return under?.parts.some((part) => marks.includes(part)) ? under.height : height;
}

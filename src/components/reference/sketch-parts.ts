/**
 * The small drawings of the reference by name, and the parts of each that an entry can mark. A part that is among the
 * symbols has the symbol's key. No imports: the schema of the content reads this file.
 * Units: none. Source: definition.
 */

/** What can be marked in each drawing. */
export const SKETCH_PARTS = {
  'band-edge': ['body-width', 'gullet'],
  'bent-band': ['bending-stress', 'thickness', 'wheel-diameter'],
  'cut-slot': ['kerf', 'set'],
  'disc-washer': [
    'dished-ring',
    'outer-diameter',
    'inner-diameter',
    'free-depth',
    'washer-thickness',
  ],
  'friction-cone': ['friction-angle', 'friction-cone', 'self-locking', 'overhauling'],
  gauge: ['gauge-length', 'clamp', 'dial-indicator', 'stretch'],
  'half-loop': ['wheel-force', 'strand-force'],
  intervals: ['error-bar', 'expanded-uncertainty', 'difference'],
  mill: [
    'band',
    'strand',
    'guide',
    'span',
    'wrap',
    'loop-length',
    'tensioner',
    'wheel-diameter',
    'centre-distance',
  ],
  readings: ['drag-torque', 'toe', 'zero', 'intercept', 'residual', 'hysteresis'],
  rim: ['crown', 'tire', 'curled-band'],
  screw: ['torque', 'thrust', 'collar', 'collar-diameter', 'pitch-diameter'],
  section: ['area', 'body-width', 'thickness'],
  setting: ['drag-torque', 'top-torque', 'top-stress', 'set-torque', 'target-stress'],
  'spring-row': [
    'band-stiffness',
    'frame-stiffness',
    'spring-stiffness',
    'wheel-force',
    'movement',
  ],
  'stress-strain': ['youngs-modulus', 'elastic-limit', 'yield'],
  'swung-span': ['frequency', 'span', 'push', 'deflection', 'strand-force'],
  'thread-form': ['ridge', 'pitch', 'pitch-diameter', 'half-angle'],
  'two-causes': ['each', 'together'],
  'unrolled-turn': ['lead', 'lead-angle', 'one-turn', 'second-start'],
  'warm-band': ['walls', 'bar'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** The name of a drawing. */
export type SketchName = keyof typeof SKETCH_PARTS;

/** A part of one drawing. */
export type SketchPart<Name extends SketchName> = (typeof SKETCH_PARTS)[Name][number];

/** The names of all drawings. */
export const SKETCH_NAMES = Object.keys(SKETCH_PARTS) as [SketchName, ...SketchName[]];

/** Whether a drawing has each of these parts. */
export const hasParts = (name: SketchName, marks: readonly string[]): boolean =>
  marks.every((mark) => SKETCH_PARTS[name].some((part) => part === mark));

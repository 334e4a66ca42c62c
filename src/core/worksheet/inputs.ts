/**
 * The inputs of a worksheet: one mill, one band, one rig, one loading series, one target.
 * Units: SI only (m, N, Pa, N·m, rad, turns).
 * What tightens is told by its load: the torque on a screw, N·m, or the pressure in a cylinder, Pa. Each has boxes of
 * its own; results are named after the torque, and are pressures where a cylinder pulls.
 * Source: definition; the defaults are those of assumptions.ts.
 */
/** The SI value of an input; undefined while it is not known. */
export type InputValue = number | undefined;

/** What is pulled: a band round two wheels, by both its strands, or one strip between two clamps. */
export type WorksheetStrands = 'two' | 'one';

/** The wheels; `wheelDiameter2` left empty means a second wheel like the first. A single strip has its length instead. */
export interface WorksheetMill {
  readonly strands?: WorksheetStrands; // two unless said
  readonly stripLength?: InputValue; // m
  readonly wheelDiameter1: InputValue; // m
  readonly wheelDiameter2: InputValue; // m
  readonly centreDistance: InputValue; // m
}

/** How the thickness is known; while that is not said, it counts as from a label. */
export type ThicknessFrom = 'unasked' | 'micrometer' | 'caliper' | 'label';

/** The band; `bodyWidth` is measured below the gullets. Young's modulus is known to ± its half-width. */
export interface WorksheetBand {
  readonly bodyWidth: InputValue; // m
  readonly widthOverTeeth: InputValue; // m, only to catch a body width that cannot be
  readonly thickness: InputValue; // m
  readonly thicknessScatter?: InputValue; // m, standard uncertainty of the mean of several readings; none of one alone
  readonly thicknessFrom: ThicknessFrom;
  readonly youngsModulus: InputValue; // Pa
  readonly youngsModulusHalfWidth: InputValue; // Pa
}

/** A thread by its standard name, such as `Tr20x4`, or by its own measures. */
export type WorksheetThread =
  | { readonly kind: 'designation'; readonly designation: string }
  | {
      readonly kind: 'own';
      readonly form: WorksheetThreadForm;
      readonly outsideDiameter: InputValue; // m
      readonly pitch: InputValue; // m
    };

/** The shape of a thread that is given by its own measures; `v60` is every 60° V thread. */
export type WorksheetThreadForm = 'square' | 'acme' | 'trapezoidal' | 'v60';

/**
 * What is believed of the screw's losses: nothing, how the thread is kept, its friction, or the efficiency as a whole.
 * Only the last two have ends of their own; with both ends empty they say as little as `unknown`.
 */
export interface WorksheetFriction {
  readonly kind: 'unknown' | 'greased' | 'dry' | 'friction' | 'efficiency';
  readonly low: InputValue;
  readonly high: InputValue;
}

/** The ring that rubs; diameters left empty are those of the thread's washer. */
interface WorksheetRing {
  readonly outerDiameter: InputValue; // m
  readonly innerDiameter: InputValue; // m
}

/** What lies under the nut or the screw's head; of a washer's friction both ends, one number alone, or nothing. */
export type WorksheetCollar =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'none' }
  | ({ readonly kind: 'bearing' } & WorksheetRing)
  | ({
      readonly kind: 'washer';
      readonly frictionLow: InputValue;
      readonly frictionHigh: InputValue;
    } & WorksheetRing);

/** What tightens the band. */
export type WorksheetTensionerKind = 'screw' | 'cylinder';

/** The hydraulic cylinder and its gauge; with a rod it pulls, on the ring round that. What is left empty is not known, not none. */
export interface WorksheetCylinder {
  readonly pistonDiameter: InputValue; // m
  readonly rodDiameter: InputValue; // m, only where the oil is on the rod's side
  readonly gaugeTop: InputValue; // Pa, to which the gauge goes
  readonly gaugeClass: InputValue; // how far it may be off, as a share of that
  readonly sealLow: InputValue; // share of the force that the seal takes
  readonly sealHigh: InputValue;
  readonly noLoadPressure: InputValue; // Pa
  readonly noLoadPressureUncertainty: InputValue; // Pa, standard
}

/** The screw or cylinder that tightens the band; `advantage` = wheel force / thrust. A no-load torque left empty is not known, not none. */
export interface WorksheetTensioner {
  readonly kind: WorksheetTensionerKind;
  readonly cylinder: WorksheetCylinder;
  readonly thread: WorksheetThread;
  readonly starts: InputValue;
  readonly friction: WorksheetFriction;
  readonly collar: WorksheetCollar;
  readonly advantage: InputValue;
  readonly dragTorque: InputValue; // N·m
  readonly dragTorqueUncertainty: InputValue; // N·m, standard
  readonly wrenchClass?: InputValue; // how far the wrench may be off, as a share of the torque
}

/** The material that the dial's bar is made of; it decides what warmth does to the reading. */
export type BarMaterial = 'steel' | 'aluminium' | 'wood';

/** How a dial reading is written down: the hand alone beside its whole turns, or both as one number. */
export type DialWritten = 'unasked' | 'handOnly' | 'together';

/** The dial on its bar; `barHeight` and `barWeight` only where the bar rests on a level strand. */
export interface WorksheetRig {
  readonly gaugeLength: InputValue; // m
  readonly gaugeLengthHalfWidth: InputValue; // m
  readonly graduation: InputValue; // m
  readonly readTo: InputValue; // m, the step to which the dial is read
  readonly dialRunsBackwards: boolean | undefined; // undefined: not said
  readonly travelPerTurn: InputValue; // m of travel in one whole turn of the hand
  readonly dialWritten: DialWritten;
  readonly barMaterial: BarMaterial;
  readonly warmed: InputValue; // K, band and bar together, from zero to the top reading
  readonly repeatability: InputValue; // m, standard deviation of the dial at one setting
  readonly barHeight: InputValue; // m above the band's mid-plane, negative when the bar hangs below it
  readonly barWeight: InputValue; // N
}

/** One row of the loading series; `turns` is the screw's turns noted beside the torque. */
export interface WorksheetReading {
  readonly torque: InputValue; // N·m
  readonly pressure?: InputValue; // Pa
  readonly dial: InputValue; // m, as shown
  readonly wholeTurns: InputValue; // whole turns of the dial's hand since the first row of its series, empty for none
  readonly turns: InputValue; // turns of the screw
  readonly series?: InputValue; // number of its series; empty: as the row above, the first is in series 1
  readonly struck?: string; // why the row is struck out and not used; empty: it is used
}

/** One dial reading taken after setting by a named way, in the same clamping as the series. */
export type WorksheetDialReading = Pick<WorksheetReading, 'dial' | 'wholeTurns'>;

/** A named way of setting the band: by its torque, by readings of its own, or both. */
export interface WorksheetWay {
  readonly name: string;
  readonly torque: InputValue; // N·m
  readonly pressure?: InputValue; // Pa
  readonly readings: readonly WorksheetDialReading[];
}

/** How the mill is used today. */
export interface WorksheetUse {
  readonly torque: InputValue; // N·m, what the band is tightened to
  readonly pressure?: InputValue; // Pa, likewise
}

/** What holds the ends of a free span: the wheels themselves, or roller guides. */
export type FreeSpanEnds = 'wheels' | 'guides';

/** What was found out beside the dial, at one torque: the span's note, how far it yields, what the screw takes back. */
export interface WorksheetSecond {
  readonly torque: InputValue; // N·m; empty: the torque in use
  readonly pressure?: InputValue; // Pa, likewise
  readonly span: InputValue; // m
  readonly ends: FreeSpanEnds;
  readonly note: InputValue; // Hz
  readonly harmonic: InputValue; // 1, 2, 3 …
  readonly force: InputValue; // N, sideways at mid-span
  readonly deflection: InputValue; // m
  readonly tightening: InputValue; // N·m, read while turning
  readonly loosening: InputValue; // N·m, at the same reading of the dial
  readonly pumping?: InputValue; // Pa, read while the cylinder moves
  readonly lettingDown?: InputValue; // Pa, at the same reading of the dial
}

/** What the reader wants, and what the makers and the steel allow; limits left empty are not checked. */
export interface WorksheetTarget {
  readonly stress: InputValue; // Pa
  readonly makerLimitStress: InputValue; // Pa
  readonly makerLimitWheelForce: InputValue; // N
  readonly yieldStrength: InputValue; // Pa
}

/** What the band must serve, and what the reader grants it: from these the window of tension is drawn. */
export interface WorksheetDemands {
  readonly guideSpan: InputValue; // m
  readonly speed: InputValue; // m/s
  readonly power: InputValue; // W, into the cut
  readonly rimFriction: InputValue; // no unit
  readonly push: InputValue; // N, at the teeth of the standing band
  readonly movement: InputValue; // m, the most that push may move them
  readonly lifeKept: InputValue; // no unit, of today's life
  readonly lifeExponent: InputValue; // no unit
  readonly warming: InputValue; // K, of the band over frame and wheels, from the first cuts on
}

/** Another band for the same mill; without a target of its own it has that of the first. */
export interface WorksheetBandOther {
  readonly name: string;
  readonly bodyWidth: InputValue; // m
  readonly thickness: InputValue; // m
  readonly targetStress: InputValue; // Pa
}

/** The whole worksheet, version 1. */
export interface Worksheet {
  readonly version: 1;
  readonly label: string;
  readonly mill: WorksheetMill;
  readonly band: WorksheetBand;
  readonly tensioner: WorksheetTensioner;
  readonly use: WorksheetUse;
  readonly rig: WorksheetRig;
  readonly readings: readonly WorksheetReading[];
  readonly second: WorksheetSecond;
  readonly ways: readonly WorksheetWay[];
  readonly target: WorksheetTarget;
  readonly demands: WorksheetDemands;
  readonly bands: readonly WorksheetBandOther[]; // beside the one that was measured
}

/**
 * What the worksheet alone assumes, and no lesson: ranges for empty boxes, limits, what makes a measurement rough.
 * Apart so that a lesson need not load it.
 * Units: SI only, said beside each.
 * Source: said beside each.
 */

/** What stands for a no-load torque that is not known, from none to this share of the torque: common practice, no source. */
export const mostDragShare = 0.1;

/** Half-width of a thickness that is only written on a label, as a share of it: common practice, no source. */
export const labelThickness = 0.03;

/** Half-width of a thickness by caliper, whose jaws bridge what a micrometer's anvils go into, m: common practice, no source. */
export const caliperThickness = 0.02e-3;

/** Friction of a thread that nobody has measured, greased or oiled, steel on steel: `screw-friction`, widened; from memory. */
export const greasedThreadFriction = { low: 0.1, high: 0.2 } as const;

/** The same of a thread that is known to be dry: `screw-friction`, widened; from memory. */
export const dryThreadFriction = { low: 0.15, high: 0.3 } as const;

/** Friction of a thread of which nobody knows how it is kept: from the lowest greased to the highest dry one: derived here. */
export const unknownThreadFriction = {
  low: greasedThreadFriction.low,
  high: dryThreadFriction.high,
} as const;

/** Friction under a washer or plain collar that nobody has measured: `screw-friction`, widened; from memory. */
export const washerFriction = { low: 0.06, high: 0.2 } as const;

/** Friction of a ball bearing at its ball circle: common practice, no source. */
export const bearingFriction = { low: 0.003, high: 0.006 } as const;

/** Half-width, as a share, of the mean diameter that a collar rubs on where the thread's washer stands for it: common practice, no source. */
export const washerDiameterSpread = 0.1;

/** Half-widths in K by which band and bar warm together while a series is taken, where nobody reads it and where a thermometer does, and one of them apart: common practice, no source. */
export const warmthHalfWidths = { together: 3, read: 1, apart: 1 } as const;

/** How far a bar may be out of line before it is seen, rad: common practice, no source. */
export const largestUnnoticedTilt = (3 * Math.PI) / 180;

/** Half-width of a gauge length measured between clamps, m: common practice, no source. */
export const gaugeLengthHalfWidth = 1e-3;

/** How far, at least, clamps stay from wheels and guides, m; nearer, a coil-set band is straight only late: derived here (zero/false-zero). */
export const clampsFromWheels = 0.25;

/** Half-width of a torque wrench's own scale unless its accuracy is told, as a share of the torque: `iso-6789`, from memory. */
export const wrenchScale = 0.04;

/** How well a wrench repeats, as a share of the torque, and the least doubt of reading one, N·m: common practice, no source. */
export const wrenchReading = { share: 0.01, least: 0.1 } as const;

/** Class of a pressure gauge that nobody has looked at, as a share of its full scale: common practice, no source. */
export const usualGaugeClass = 0.025;

/** How far a gauge goes whose scale nobody has written down, over the pressure that is used: common practice, no source. */
export const usualGaugeTop = 2;

/** How well a gauge repeats, as a share of the pressure, and the least doubt of reading one, Pa: common practice, no source. */
export const gaugeReading = { share: 0.01, least: 0.5e5 } as const;

/**
 * Share of a cylinder's force that its seal takes beyond what the empty cylinder shows, where nobody knows it: of the 2 to
 * 6 % that all of it takes, some or all grows with the pressure: common practice, no source.
 */
export const sealFriction = { low: 0, high: 0.06 } as const;

/** What stands for a no-load pressure that is not known, from none to this share of the pressure: common practice, no source. */
export const mostNoLoadShare = 0.05;

/** Standard uncertainty of the pressure that moves the empty cylinder, Pa, as far as two tries differ: common practice, no source. */
export const noLoadPressureDoubt = 0.5e5;

/** Half-width of the diameters of piston and rod, m: common practice, no source. */
export const cylinderHalfWidth = 0.1e-3;

/** Half-width of turns of the screw as they are counted, by flats or twelfths: common practice, no source. */
export const turnsHalfWidth = 1 / 24;

/** Share of a setting's load, above the drag, at which to begin counting turns: common practice, no source. */
export const markedShare = 0.5;

/** Standard uncertainty of the torque that turns the empty screw, N·m, as far as two tries differ: common practice, no source. */
export const dragTorqueDoubt = 0.1;

/** The steepest lead of a screw, rad; beyond it a pitch is in the wrong unit: common practice, no source. */
export const steepestLead = (25 * Math.PI) / 180;

/** Wheel diameter over thickness that a band needs at least: common practice, no source. */
export const leastWheelShare = 250;

/** Tension outside of which a setting is remarked upon, Pa: common practice, no source. */
export const commonStress = { low: 50e6, high: 200e6 } as const;

/** Share of a stress from which on its uncertainty is called wide: common practice, no source. */
export const wideUncertainty = 0.15;

/** Share of the load above which the lowest reading hides the toe: common practice, no source. */
export const highStart = 0.3;

/** Share of a stress from which on its expanded uncertainty makes a measurement rough: common practice, no source. */
export const roughUncertainty = 0.25;

/**
 * How much wider the standard uncertainty of the stretch is taken where a measurement is rough: derived here by
 * simulation, so that 93 % of the intervals hold the truth on toes that still have 5 % left at half of the load or more.
 */
export const roughWidening = 1.25;

/** Share of the top reading beyond which a line that is carried on calls for caution: common practice, no source. */
export const farBeyondReadings = 1.25;

/** Half-width of a note by a tuner, as a share of it: common practice, no source. */
export const noteHalfWidth = 0.01;

/** Mass of the band and the air it carries over that of the pulled section: derived here (span/band-mass), where the teeth are not measured. */
export const usualMassRatio = { low: 1.05, high: 1.13 } as const;

/** Air that a plucked band carries along, as a share of its mass: derived here (span/band-mass). */
export const airShare = { low: 0.004, high: 0.01 } as const;

/** What friction in a slide adds to the load that two torques tell, as a share, for a slide that takes up to a twentieth: derived here. */
export const slideShare = { low: 0, high: 0.17 } as const;

/** What the load from two torques leaves out where no friction is known, as a share: derived here (screw/two-torques). */
export const estimateShare = { low: 0.015, high: 0.03 } as const;

/** Random trials of the prediction, those of where it meets a limit, and the seed of all trials on a worksheet, so that they are the same each time: by definition. */
export const worksheetTrials = { prediction: 20_000, limit: 2000, seed: 1 } as const;

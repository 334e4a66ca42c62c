/**
 * A second opinion: the note of a plucked span by its stress and length, the stress that a note tells, the stress that a
 * weight on the strand tells, and three routes to one stress with a mistake on one of them.
 * Units: SI.
 * Source: core/span, core/agreement; the mills at Ottersleigh and Yarrock are invented.
 */
import { lowestNote, pitchFromStress, stressFromPitch } from '../../core/span.ts';
import { defineModel } from '../../models/define-model.ts';
import { bandArea, OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { NOTE_RANGE } from './note-range.ts';
import { OUTPUTS } from './outputs.ts';
import { PHONE_HEARS_FROM } from './phone.ts';
import { forcesOf, pressShare, STANDARD_GRAVITY, STRAND } from './press/forces.ts';
import { MISTAKES, type Mistake } from './routes/mistakes.ts';
import { read, routes, seen, sizes } from './routes/results.worked.ts';
import { type FoundNote, stressFromNote, stringStress } from './stress-from-note.ts';
import { BANDS, type BandName, bodyOf, stripOf } from './strip.ts';

/** The stress and the span that the lesson asks about first. */
export const asked = { stress: OTTERSLEIGH.targetStress, span: OTTERSLEIGH.guideSpan } as const;

const GRAVITY_IN_INCHES = STANDARD_GRAVITY / 0.0254; // an inch in m
const SLACKEST_PRESS = 1 / 200; // of the strand: further aside the press itself adds too much tension

const otherThan = (band: BandName): BandName => (band === 'narrow' ? 'wide' : 'narrow');

/** The tones of a band's span under a stress, and those of a string and of the other band. */
function tones(band: BandName, span: number, stress: number) {
  const strip = { ...stripOf(band, span), stress };
  const other = stripOf(otherThan(band), span);
  return {
    pitch: pitchFromStress(strip),
    secondTone: pitchFromStress({ ...strip, harmonic: 2 }),
    thirdTone: pitchFromStress({ ...strip, harmonic: 3 }),
    otherPitch: pitchFromStress({ ...other, stress }),
    fourfoldPitch: pitchFromStress({ ...strip, stress: 4 * stress }),
  };
}

/** The stress if the note were the second tone, and the fundamental that this would be. */
function asSecondTone({ note, span, band }: FoundNote) {
  const strip = stripOf(band, span);
  const second = { ...strip, harmonic: 2 };
  const lowest = lowestNote(second);
  const ifSecond = stressFromPitch({ ...second, frequency: Math.max(note, lowest) });
  const firstIfSecond = pitchFromStress({ ...strip, stress: ifSecond });
  return { ifSecond, firstIfSecond, canBeSecond: note > lowest ? 1 : 0 };
}

/** What the note tells of the stress. */
function heard(found: FoundNote) {
  const { stress, expanded, lowest } = stressFromNote(found);
  const string = stringStress(found);
  return {
    ...asSecondTone(found),
    stringStress: string,
    stringWithoutTeeth: string / bodyOf(found.band).massRatio,
    stringInPounds: string * GRAVITY_IN_INCHES,
    noteStress: stress,
    noteExpanded: expanded,
    noteLow: stress - expanded,
    noteHigh: stress + expanded,
    noteString: 1 - stress / string,
    lowestNote: lowest,
    isTooLow: found.note < lowest ? 1 : 0,
  };
}

/** What the weight tells. */
function pressed(weight: number, deflection: number) {
  const { force, string, full } = forcesOf(weight, deflection);
  const pressStress = full / bandArea;
  return {
    pressForce: force,
    pressString: string,
    pullOfMass: string / STANDARD_GRAVITY,
    pressPull: full,
    pressStress,
    pressStringStress: string / bandArea,
    pressExpanded: pressStress * pressShare(deflection),
    pressCorrection: 1 - full / string,
  };
}

/** The three routes under a mistake. */
function compared(mistake: Mistake) {
  const found = routes[MISTAKES.indexOf(mistake)];
  if (!found) throw new RangeError(`mistake must be one of ours (was ${mistake})`);
  const { dial, pluck, press, dialPluck, dialPress, pluckPress } = found;
  return {
    dialStress: dial.value,
    dialExpanded: dial.expanded,
    pluckStress: pluck.value,
    pluckExpanded: pluck.expanded,
    weightStress: press.value,
    weightExpanded: press.expanded,
    dialPluck,
    dialPress,
    pluckPress,
  };
}

/** Stress and span to note; note to stress; weight and movement to stress; mistake to agreement. */
export const secondOpinion = defineModel({
  name: 'second-opinion',
  inputs: {
    stress: {
      kind: 'stress',
      default: 80e6,
      min: 20e6,
      max: 240e6,
      step: { metric: 1e6, us: 689475.7 },
    },
    span: { kind: 'length', default: 0.55, min: 0.2, max: 1, step: { metric: 0.01, us: 0.0127 } },
    band: { options: ['narrow', 'wide'], default: 'narrow' },
    note: {
      kind: 'frequency',
      default: read.note,
      min: NOTE_RANGE.low,
      max: NOTE_RANGE.high,
      step: { metric: 0.1, us: 0.1 },
    },
    noteWidth: {
      kind: 'frequency',
      default: read.noteWidth,
      min: 0.1,
      max: 8,
      step: { metric: 0.1, us: 0.1 },
    },
    weight: {
      kind: 'mass',
      default: read.weight,
      min: 1.5,
      max: 10,
      step: { metric: 0.1, us: 0.0453592 },
    },
    deflection: {
      kind: 'length',
      default: read.deflection,
      min: 0.002,
      max: 0.01,
      step: { metric: 1e-4, us: 1.27e-4 },
    },
    mistake: { options: MISTAKES, default: 'nothing' },
  },
  outputs: OUTPUTS,
  constants: {
    density: OTTERSLEIGH.density,
    poundGravity: GRAVITY_IN_INCHES,
    phoneHears: PHONE_HEARS_FROM,
    strandPitch: pitchFromStress({
      ...stripOf('narrow', OTTERSLEIGH.centreDistance),
      ends: 'wheels',
      stress: OTTERSLEIGH.targetStress,
    }),
    strandSpan: STRAND.span,
    mostDeflection: STRAND.span * SLACKEST_PRESS,
    sectionTimes: sizes.section - 1,
    seenByNote: seen.byNote,
    seenByDial: seen.byDial,
    zeroError: sizes.zero,
    spanError: sizes.span,
  },
  evaluate: ({ stress, span, band, note, noteWidth, weight, deflection, mistake }) => {
    const { area, massRatio } = bodyOf(band);
    const { bodyWidth, thickness } = BANDS[band];
    return {
      ...tones(band, span, stress),
      ...heard({ note, noteWidth, span, band }),
      ...pressed(weight, deflection),
      ...compared(mistake),
      strandPull: stress * area,
      otherPull: stress * bodyOf(otherThan(band)).area,
      area,
      bodyWidth,
      thickness,
      teeth: massRatio,
    };
  },
});

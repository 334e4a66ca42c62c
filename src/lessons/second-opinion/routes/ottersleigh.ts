/**
 * Three routes to one stress at Ottersleigh, the handle at the last torque of its series: the dial, the note of the span
 * between the guides, a weight on the free strand; each as it was read, and with one mistake.
 * Units: SI.
 * Source: invented: note and deflection are what the simulated mill would have shown, to the digits of their instruments;
 * the dial: core/worksheet.
 */
import { agreementNumber } from '../../../core/agreement.ts';
import { rootBetween } from '../../../core/root.ts';
import { efficiency, stressFromTorque } from '../../../core/screw.ts';
import { pitchFromStress } from '../../../core/span.ts';
import { evaluateWorksheet } from '../../../core/worksheet.ts';
import { bandArea, OTTERSLEIGH, screwWith } from '../../../models/mills/ottersleigh.ts';
import {
  HIDDEN_THREAD_FRICTION,
  OTTERSLEIGH_SHEET,
} from '../../../models/mills/ottersleigh-sheet.ts';
import { deflectionOf, forcesOf, pressShare } from '../press/forces.ts';
import { stressFromNote } from '../stress-from-note.ts';
import { stripOf } from '../strip.ts';
import type { Mistake } from './mistakes.ts';

/** How large the mistakes are. */
export const SIZES = {
  section: 1.25, // the section taken, over the true one
  zero: 50e-6, // m that the dial's zero was set too early
  span: 0.06, // m that the span was measured too long, to the far sides of the rollers
} as const;

const LARGEST = 10; // times the section: beyond what any pair would miss

const rounded = (value: number, to: number) => Math.round(value / to) * to;

/** A stress with its expanded uncertainty, Pa. */
export interface Route {
  readonly value: number;
  readonly expanded: number;
}

/** The three results and how their pairs agree. */
export interface Routes {
  readonly dial: Route;
  readonly pluck: Route;
  readonly press: Route;
  readonly dialPluck: number;
  readonly dialPress: number;
  readonly pluckPress: number;
}

const { measured } = evaluateWorksheet(OTTERSLEIGH_SHEET);
if (!measured.ready) throw new RangeError('the series of Ottersleigh must be there');
const { stress: dialStress, expandedUncertainty, topTorque, operands } = measured;

const screw = screwWith(HIDDEN_THREAD_FRICTION);

/** The stress that the simulated mill had at its last torque, which nobody there knows. */
export const hiddenStress = stressFromTorque(
  { lead: screw.lead, efficiency: efficiency(screw), dragTorque: OTTERSLEIGH.dragTorque },
  { area: bandArea },
  topTorque,
);

const strip = stripOf('narrow', OTTERSLEIGH.guideSpan);
const noteAt = (harmonic: number) =>
  rounded(pitchFromStress({ ...strip, harmonic, stress: hiddenStress }), 0.1);
const WEIGHT = 5; // kg

/** What the owner read on the two checks. */
export const READ = {
  note: noteAt(1), // Hz
  secondTone: noteAt(2), // Hz
  noteWidth: 0.5, // Hz
  weight: WEIGHT, // kg
  deflection: rounded(deflectionOf(WEIGHT, hiddenStress), 1e-4), // m
} as const;

function dialRoute(mistake: Mistake): Route {
  const { youngsModulus, gaugeLength, misalignment } = operands;
  const extra =
    mistake === 'zero' ? (SIZES.zero * youngsModulus) / (gaugeLength * misalignment) : 0;
  return { value: dialStress + extra, expanded: expandedUncertainty };
}

function pluckRoute(mistake: Mistake): Route {
  const note = mistake === 'harmonic' ? READ.secondTone : READ.note;
  const span = OTTERSLEIGH.guideSpan + (mistake === 'span' ? SIZES.span : 0);
  const { stress, expanded } = stressFromNote({
    note,
    noteWidth: READ.noteWidth,
    span,
    band: 'narrow',
  });
  return { value: stress, expanded };
}

/** By the weight, with the section taken so many times too large. */
function pressRoute(taken: number): Route {
  const value = forcesOf(READ.weight, READ.deflection).full / (bandArea * taken);
  return { value, expanded: value * pressShare(READ.deflection) };
}

/** The three routes with one mistake. */
export function routesWith(mistake: Mistake): Routes {
  const press = pressRoute(mistake === 'section' ? SIZES.section : 1);
  const [dial, pluck] = [dialRoute(mistake), pluckRoute(mistake)];
  return {
    dial,
    pluck,
    press,
    dialPluck: agreementNumber(dial, pluck),
    dialPress: agreementNumber(dial, press),
    pluckPress: agreementNumber(pluck, press),
  };
}

/** How many times too large the section must be taken before the weight disagrees with another route. */
const leastSeen = (other: Route): number =>
  rootBetween((taken) => agreementNumber(other, pressRoute(taken)) - 1, 1, LARGEST);

/** The smallest mistake of the section that each other route catches, as a share of the section. */
export const SEEN = {
  byDial: leastSeen(dialRoute('nothing')) - 1,
  byNote: leastSeen(pluckRoute('nothing')) - 1,
} as const;

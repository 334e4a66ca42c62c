/**
 * The worksheet of the mill at Ottersleigh as its owner filled it in, with one loading series.
 * Units: SI.
 * Source: invented; the readings were drawn from a simulated mill.
 */
import { emptyWorksheet, type Worksheet } from '../../core/worksheet.ts';
import { OTTERSLEIGH } from './ottersleigh.ts';

/** What the simulation that gave the readings had in its thread: nobody at the mill knows it. */
export const HIDDEN_THREAD_FRICTION = 0.154;

/** Torque in N·m, the dial as shown in m, and how far the handle stood from the first, in notches of its rim. */
const ROWS = [
  [1.5, 470e-6, 0],
  [3, 475e-6, 6],
  [4.5, 460e-6, 10],
  [5.5, 450e-6, 12],
  [7, 425e-6, 16],
  [8.5, 405e-6, 20],
  [10, 375e-6, 24],
  [11.5, 355e-6, 28],
  [13, 325e-6, 31],
  [14.5, 315e-6, 35],
] as const;
const NOTCHES = 72; // of a turn

const { wheelDiameter, threadSize, threadFriction, collar, collarFriction } = OTTERSLEIGH;
const { band, tensioner, rig, target, ...none } = emptyWorksheet;

/** The sheet; the torques of its readings rise to the last. */
export const OTTERSLEIGH_SHEET: Worksheet = {
  ...none,
  label: OTTERSLEIGH.place,
  mill: {
    wheelDiameter1: wheelDiameter,
    wheelDiameter2: wheelDiameter,
    centreDistance: OTTERSLEIGH.centreDistance,
  },
  band: {
    ...band,
    bodyWidth: OTTERSLEIGH.bodyWidth,
    widthOverTeeth: OTTERSLEIGH.widthOverTeeth,
    thickness: OTTERSLEIGH.thickness,
    thicknessFrom: 'micrometer',
  },
  tensioner: {
    ...tensioner,
    thread: {
      kind: 'own',
      form: 'trapezoidal',
      outsideDiameter: threadSize.majorDiameter,
      pitch: threadSize.pitch,
    },
    friction: { kind: 'friction', low: threadFriction.low, high: threadFriction.high },
    collar: { kind: 'washer', frictionLow: collarFriction, frictionHigh: undefined, ...collar },
    dragTorque: OTTERSLEIGH.dragTorque,
  },
  rig: {
    ...rig,
    gaugeLength: OTTERSLEIGH.gaugeLength,
    graduation: OTTERSLEIGH.graduation,
    readTo: OTTERSLEIGH.graduation / 2,
    dialRunsBackwards: true,
    travelPerTurn: 1e-3,
  },
  readings: ROWS.map(([torque, dial, notches]) => ({
    torque,
    dial,
    wholeTurns: 0,
    turns: notches / NOTCHES,
  })),
  target: { ...target, stress: OTTERSLEIGH.targetStress },
};

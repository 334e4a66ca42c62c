/**
 * The worksheet before anything is written on it: nothing but what is assumed of every steel, rig and mill.
 * Units: SI only.
 * Source: assumptions.ts and own-assumptions.ts.
 */
import { bandSteel, bandWarming, lifeExponent, rimFriction, windowWishes } from '../assumptions.ts';
import type { Worksheet, WorksheetReading } from './inputs.ts';
import { dragTorqueDoubt, gaugeLengthHalfWidth, noLoadPressureDoubt } from './own-assumptions.ts';

/** A reading row with nothing in it. */
export const emptyReading: WorksheetReading = {
  torque: undefined,
  dial: undefined,
  wholeTurns: undefined,
  turns: undefined,
};

/** A worksheet with nothing in it but what is assumed of every steel and every rig, and no lever. */
export const emptyWorksheet: Worksheet = {
  version: 1,
  label: '',
  mill: {
    strands: 'two',
    stripLength: undefined,
    wheelDiameter1: undefined,
    wheelDiameter2: undefined,
    centreDistance: undefined,
  },
  band: {
    bodyWidth: undefined,
    widthOverTeeth: undefined,
    thickness: undefined,
    thicknessFrom: 'unasked',
    youngsModulus: bandSteel.youngsModulus,
    youngsModulusHalfWidth: bandSteel.youngsModulusHalfWidth,
  },
  tensioner: {
    kind: 'screw',
    cylinder: {
      pistonDiameter: undefined,
      rodDiameter: undefined,
      gaugeTop: undefined,
      gaugeClass: undefined,
      sealLow: undefined,
      sealHigh: undefined,
      noLoadPressure: undefined,
      noLoadPressureUncertainty: noLoadPressureDoubt,
    },
    thread: { kind: 'designation', designation: '' },
    starts: 1,
    friction: { kind: 'unknown', low: undefined, high: undefined },
    collar: { kind: 'unknown' },
    advantage: 1,
    dragTorque: undefined,
    dragTorqueUncertainty: dragTorqueDoubt,
  },
  use: { torque: undefined, pressure: undefined },
  rig: {
    gaugeLength: undefined,
    gaugeLengthHalfWidth,
    graduation: undefined,
    readTo: undefined,
    dialRunsBackwards: undefined,
    travelPerTurn: undefined,
    dialWritten: 'unasked',
    barMaterial: 'steel',
    warmed: undefined,
    repeatability: undefined,
    barHeight: undefined,
    barWeight: undefined,
  },
  readings: [],
  second: {
    torque: undefined,
    pressure: undefined,
    span: undefined,
    ends: 'wheels',
    note: undefined,
    harmonic: 1,
    force: undefined,
    deflection: undefined,
    tightening: undefined,
    loosening: undefined,
    pumping: undefined,
    lettingDown: undefined,
  },
  ways: [],
  target: {
    stress: undefined,
    makerLimitStress: undefined,
    makerLimitWheelForce: undefined,
    yieldStrength: bandSteel.yieldStrength,
  },
  demands: {
    guideSpan: undefined,
    speed: undefined,
    power: undefined,
    rimFriction: rimFriction.low,
    push: windowWishes.push,
    movement: windowWishes.movement,
    lifeKept: windowWishes.lifeKept,
    lifeExponent: lifeExponent.usual,
    warming: bandWarming,
  },
  bands: [],
};

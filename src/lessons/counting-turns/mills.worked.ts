/**
 * Four invented mills that tighten their bands in four ways: a screw on a stiff frame, a screw on disc washers, a screw
 * on a long soft spring, oil behind a piston.
 * Units: SI.
 * Source: invented; frictions from handbook ranges (`screw-friction`), from memory.
 */

import { OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import type { CountingMill } from './mill.ts';

const inch = 0.0254;
const { place, wheelDiameter, centreDistance, bodyWidth, thickness } = OTTERSLEIGH;
const { frameStiffness, dragTorque, gaugeLength, graduation, targetStress } = OTTERSLEIGH;
const WASHER_STEEL = { youngsModulus: 206e9, poissonsRatio: 0.3 } as const;

/** The gauge on Ottersleigh's band. */
export const GAUGE = { gaugeLength, graduation } as const;

/** The mills by what the reader chooses. */
export const MILLS = {
  stiffFrame: {
    place,
    wheelDiameter,
    centreDistance,
    bodyWidth,
    thickness,
    frameStiffness,
    spring: { kind: 'none' },
    screw: screwWith(OTTERSLEIGH.threadFriction.middle),
    dragTorque,
    setting: targetStress,
  },
  discWashers: {
    place: 'Hobsend',
    wheelDiameter: 0.3556,
    centreDistance: 0.762,
    bodyWidth: 0.020828,
    thickness: 0.000889,
    frameStiffness: 4e6,
    spring: {
      kind: 'discs',
      stack: {
        disc: {
          outerDiameter: 0.0315,
          innerDiameter: 0.0163,
          thickness: 0.00175,
          coneHeight: 0.0007,
          ...WASHER_STEEL,
        },
        groupsInSeries: 8,
      },
    },
    // 5/8-11 UNC, on a plain washer of 1 1/4 by 0.66 in
    screw: {
      meanDiameter: (5 / 8 - (3 * Math.sqrt(3)) / 8 / 11) * inch,
      lead: inch / 11,
      halfAngle: Math.PI / 6,
      threadFriction: 0.15,
      collarFriction: 0.12,
      collarDiameter: 0.955 * inch,
    },
    dragTorque: 0.6,
    setting: 84_805_514.706,
  },
  softSpring: {
    place: 'Yarrock',
    wheelDiameter: 1.07,
    centreDistance: 2.3,
    bodyWidth: 0.092,
    thickness: 0.00125,
    frameStiffness: 30e6,
    spring: {
      kind: 'coil',
      stiffness: 0.25e6,
      coil: { freeLength: 0.33, meanDiameter: 0.1, wire: 0.02, activeTurns: 6.32 },
    },
    // Acme 1 1/4-5 with two starts, on a ball bearing of 58 by 32 mm
    screw: {
      meanDiameter: 1.15 * inch,
      lead: 0.4 * inch,
      halfAngle: (14.5 * Math.PI) / 180,
      threadFriction: 0.12,
      collarFriction: 0.005,
      collarDiameter: 0.045,
    },
    dragTorque: 2.5,
    setting: 95e6,
  },
  oil: {
    place: 'Dunmarrow',
    wheelDiameter: 0.76,
    centreDistance: 1.9,
    bodyWidth: 0.042,
    thickness: 0.00125,
    frameStiffness: 12e6,
    spring: { kind: 'none' },
    cylinder: { bore: 0.04, sealFriction: 350 },
    setting: 120e6,
  },
} as const satisfies Readonly<Record<string, CountingMill>>;

import { describe, expect, it } from 'vitest';
import {
  cylinderSizes,
  leadOf,
  oilArea,
  thrustPerLoad,
  worksheetDrive,
} from '../../../../src/core/worksheet/predict/drive.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA } from '../fixtures/mills.ts';

const withRod = (rodDiameter: number | undefined, pistonDiameter: number | undefined = 0.05) => ({
  ...millD.tensioner,
  cylinder: { ...millD.tensioner.cylinder, pistonDiameter, rodDiameter },
});

describe('what turns the load into thrust', () => {
  it('is the lead of a screw: by hand, 4 mm give 2π/4 mm = 1570.8 N for each N·m', () => {
    const { drive } = numbersOf(worksheetDrive(millA.tensioner));
    expect(drive).toEqual({ kind: 'screw', lead: expect.closeTo(0.004, 12) });
    expect(thrustPerLoad(drive)).toBeCloseTo(1570.796, 3);
    expect(leadOf(drive)).toBeCloseTo(0.004, 12);
  });

  it('is the area of a piston: by hand, 40 mm have 1256.64 mm², 125.66 N for each bar', () => {
    const { drive } = numbersOf(worksheetDrive(millD.tensioner));
    expect(1e6 * thrustPerLoad(drive)).toBeCloseTo(1256.637, 3);
    expect(1e5 * thrustPerLoad(drive)).toBeCloseTo(125.664, 3);
    expect(leadOf(drive)).toBeUndefined();
  });

  it('is the ring round the rod where it pulls: by hand, 50 and 30 mm leave 400π mm²', () => {
    expect(1e6 * oilArea({ pistonDiameter: 0.05, rodDiameter: 0.03 })).toBeCloseTo(
      400 * Math.PI,
      9,
    );
    const none = numbersOf(cylinderSizes(withRod(undefined)));
    expect(oilArea(none)).toBe(oilArea({ ...none, rodDiameter: 0 }));
  });

  it('refuses a rod as thick as its piston, and waits for the piston', () => {
    for (const rod of [0.05, 0.06])
      expect(worksheetDrive(withRod(rod))).toMatchObject({
        ready: false,
        waitsFor: ['tensioner.cylinder.rodDiameter', 'tensioner.cylinder.pistonDiameter'],
        refusal: { code: 'rodTooThick', values: { rodDiameter: rod } },
      });
    const { cylinder } = millD.tensioner;
    const open = { ...millD.tensioner, cylinder: { ...cylinder, pistonDiameter: undefined } };
    expect(worksheetDrive(open)).toEqual({
      ready: false,
      waitsFor: ['tensioner.cylinder.pistonDiameter'],
    });
  });
});

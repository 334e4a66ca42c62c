import { describe, expect, it } from 'vitest';
import { torqueAtHand, worksheetDrag } from '../../../src/core/worksheet/torque-at-hand.ts';
import { numbersOf } from '../fixtures/ready.ts';
import { millA } from './fixtures/mills.ts';

const unread = { ...millA, readings: [], use: { torque: 12 } };
const noDrag = { ...millA.tensioner, dragTorque: undefined };

describe('torqueAtHand', () => {
  it('is the top torque of the readings, before the one in use', () => {
    expect(numbersOf(torqueAtHand({ ...millA, use: { torque: 99 } })).torque).toBe(14.5);
    expect(numbersOf(torqueAtHand(unread)).torque).toBe(12);
  });

  it('waits for the one in use without either', () =>
    expect(torqueAtHand({ ...unread, use: { torque: undefined } })).toEqual({
      ready: false,
      waitsFor: ['use.torque'],
    }));
});

describe('worksheetDrag', () => {
  it('is as typed, with its own doubt', () => {
    const { dragTorque, uncertainty, isAssumed } = numbersOf(worksheetDrag(millA));
    expect([dragTorque, uncertainty, isAssumed]).toEqual([0.8, 0.1, false]);
  });

  it('left empty is anything up to a tenth of the torque: at 14.5 N·m, 0.725 ± 0.725 / √3', () => {
    const drag = numbersOf(worksheetDrag({ ...millA, tensioner: noDrag }));
    expect(drag.dragTorque).toBeCloseTo(0.725, 12);
    expect(drag.uncertainty).toBeCloseTo(0.725 / Math.sqrt(3), 12);
    expect(drag.input).toMatchObject({ halfWidth: drag.dragTorque, shape: 'rectangular' });
  });

  it('waits for a torque to be a part of, and refuses less than none', () => {
    const open = { ...unread, tensioner: noDrag, use: { torque: undefined } };
    expect(worksheetDrag(open)).toEqual({ ready: false, waitsFor: ['use.torque'] });
    const tensioner = { ...millA.tensioner, dragTorque: -1 };
    expect(worksheetDrag({ ...millA, tensioner })).toMatchObject({
      waitsFor: ['tensioner.dragTorque'],
      refusal: { code: 'outOfRange' },
    });
  });
});

/** Commands and their history: nothing throws, and what is done can be undone and done again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FieldPath, isFieldPath } from '../../../src/form/paths.ts';
import { entriesOf, mayStand, typedAt } from '../../../src/form/typed.ts';
import { begun, done, redone, settled, undone } from '../../../src/worksheet/state/history.ts';
import { apply, type Command, emptyProject } from '../../../src/worksheet/state/project.ts';
import { anyCommand, anyStep } from './random-commands.ts';

const start = begun(emptyProject('metric'));
const typing = (path: FieldPath, text: string): Command => ({ do: 'type', path, text });
const widthOf = ({ present }: typeof start) => typedAt(present.typed, 'band.bodyWidth');

describe('a command', () => {
  it('never throws, and leaves only what may stand on the form', () =>
    fc.assert(
      fc.property(fc.array(anyCommand, { maxLength: 12 }), (commands) => {
        const { typed } = commands.reduce(apply, emptyProject('metric'));
        expect(entriesOf(typed).filter(([path, text]) => !mayStand(path, text))).toEqual([]);
      }),
    ));

  it('at a path that is none changes nothing', () => {
    const project = emptyProject('us');
    for (const path of ['band.colour', 'readings.2000.dial', '__proto__'] as FieldPath[]) {
      expect(isFieldPath(path)).toBe(false);
      expect(apply(project, typing(path, '1'))).toBe(project);
    }
  });

  it('to change units keeps what bare numbers mean', () => {
    const typed = apply(emptyProject('metric'), typing('band.bodyWidth', '29'));
    const inUs = apply(typed, { do: 'units', system: 'us' });
    expect(typedAt(inUs.typed, 'band.bodyWidth')).toBe('29 mm');
    expect(apply(inUs, { do: 'units', system: 'metric' })).toEqual(typed);
  });
});

describe('undo', () => {
  it('takes back every step, and redo does each again', () =>
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 12 }), (commands) => {
        const all = commands.reduce((history, each) => done(settled(history), each, 0), start);
        const back = all.past.reduce(undone, all);
        expect(back.present).toEqual(start.present);
        expect(back.past).toEqual([]);
        expect(back.future.reduce(redone, back).present).toEqual(all.present);
      }),
    ));

  it('of what was typed before a change of units gives what it meant', () => {
    const typed = done(
      settled(done(start, typing('band.bodyWidth', '29'), 0)),
      typing('label', 'M'),
      9,
    );
    const inUs = done(typed, { do: 'units', system: 'us' }, 10);
    expect(inUs.past).toBe(typed.past);
    expect(widthOf(undone(inUs))).toBe('29 mm');
    expect(redone(undone(inUs)).present).toEqual(inUs.present);
  });

  it('at the beginning, and redo at the end, change nothing', () => {
    expect(undone(start)).toBe(start);
    expect(redone(start)).toBe(start);
  });

  it('forgets what could have been done again once something else is done', () => {
    const other = done(undone(done(start, typing('label', 'M'), 0)), typing('label', 'N'), 1);
    expect(other.future).toEqual([]);
    expect(redone(other)).toBe(other);
  });

  it('keeps the last 200 steps', () => {
    const many = Array.from({ length: 230 }, (_, i) => typing('label', `${i}`)).reduce(
      (history, each) => done(settled(history), each, 0),
      start,
    );
    expect(many.past).toHaveLength(200);
  });
});

describe('typing into one box', () => {
  const keys = ['2', '29', '29 '].map((text) => typing('band.bodyWidth', text));

  it('without a pause is one step', () => {
    const typed = keys.reduce((history, key, i) => done(history, key, i * 2900), start);
    expect(typed.past).toHaveLength(1);
    expect(widthOf(undone(typed))).toBe('');
    expect(widthOf(redone(undone(typed)))).toBe('29 ');
  });

  it.each([
    ['a pause', (history: typeof start) => done(history, typing('band.bodyWidth', '3'), 3000)],
    [
      'leaving it',
      (history: typeof start) => done(settled(history), typing('band.bodyWidth', '3'), 1),
    ],
    [
      'an undo',
      (history: typeof start) => done(redone(undone(history)), typing('band.bodyWidth', '3'), 1),
    ],
    ['another box', (history: typeof start) => done(history, typing('band.thickness', '1'), 1)],
    [
      'a paste',
      (history: typeof start) =>
        done(
          history,
          { do: 'fill', path: 'readings.0.torque', texts: [['readings.0.torque', '1']] },
          1,
        ),
    ],
  ])('after %s is another', (_, next) => {
    const first = done(start, typing('band.bodyWidth', '2'), 0);
    expect(next(first).past).toHaveLength(2);
  });
});

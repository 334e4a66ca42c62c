import { describe, expect, it } from 'vitest';
import { figure as frame } from '../../../src/lessons/counting-turns/frame.figure.tsx';
import { countingTurns as model } from '../../../src/lessons/counting-turns/model.ts';
import type { Figure, State } from '../../../src/lessons/counting-turns/state.ts';
import { figure } from '../../../src/lessons/counting-turns/turns.figure.tsx';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Inputs = Partial<InputsOf<typeof model>>;

function stateAt(inputs: Inputs): State {
  const values = evaluated(model, inputsAt(model, inputs, 'metric'));
  return { values, system: 'metric', narrow: false, idPrefix: 'x' };
}

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
const found = ({ finding }: Figure, inputs: Inputs = {}) => plain(finding(stateAt(inputs)));

describe('the turns', () => {
  // By hand: 2 mm past the slack on 5.483 and 8 kN/mm in a row pull with 6507 N.
  it('say where they went, what the steel carries and what the wrench shows', () =>
    expect(found(figure)).toMatch(
      /^Of 1 turn, slack took 0\.5 turns, the band 0\.297 turns, the frame 0\.203 turns\. The steel carries 112 MPa; the wrench shows 14\.0 N·m\.$/,
    ));
  it('say of the slack that only the drag shows', () =>
    expect(found(figure, { turnsStiff: 0.25 })).toBe(
      '0.25 turns, and all of it slack: the steel carries nothing. The wrench shows only the drag, 0.800 N·m.',
    ));
  it('say before the first that nothing pulls yet', () =>
    expect(found(figure, { turnsStiff: 0 })).toMatch(/^The nut just touches/));
  it('warn past what small mills use', () =>
    expect(found(figure, { turnsStiff: 1.25, slack: 0.001 })).toMatch(
      /more than small mills use; the wrench/,
    ));
  it('name the spring’s part, and none under oil', () => {
    expect(found(figure, { tensioner: 'softSpring' })).toMatch(/, the spring 8\.55 turns\./);
    expect(found(figure, { tensioner: 'oil' })).toMatch(/^At 103 bar .*whatever the slack was/);
    expect(found(figure, { tensioner: 'oil', pressure: 1e5 })).toMatch(/not yet moved the seal/);
  });
  it('stand beside the mill and the lead of its screw', () => {
    const notes = (inputs: Inputs) => figure.notes(stateAt(inputs)).map(plain);
    expect(notes({})[0]).toBe('an invented mill at Ottersleigh, lead of its screw 4 mm/turn');
    expect(notes({ tensioner: 'oil' })[0]).toBe('an invented mill at Dunmarrow');
  });
});

describe('the frame', () => {
  it('shows where the reading clears its doubt', () =>
    expect(found(frame)).toMatch(/the frame the rest: it is 7\.4 kN\/mm stiff, between/));
  it('is only stiffer than a least where it does not', () =>
    expect(found(frame, { turnStep: 'quarter' })).toMatch(/^Of 0\.319 turns .* is stiffer than/));
  it('is not found where the dial shows more than the nut has travelled', () => {
    const inputs = { readStretch: 0.25e-3 };
    expect(found(frame, inputs)).toMatch(
      /^The dial shows more than the nut has travelled: the band alone would have taken 0\.339 turns of 0\.319 turns\./,
    );
    expect(plain(frame.description(stateAt(inputs)))).toMatch(
      /lies to the left of .* is 0\.077 mm/,
    );
  });
  it('is told of where the band alone needs more turns than any doubt allows', () =>
    expect(found(frame, { readTurns: 6 / 72, readStretch: 0.3e-3 })).toMatch(
      /fewer than the band alone needs/,
    ));
});

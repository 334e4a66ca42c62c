import { describe, expect, it } from 'vitest';
import { steelInTheSection } from '../../../src/lessons/steel-in-the-section/model.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

/** Worked by hand in the derived table of the invented mill A: section 29 mm², target 110 MPa; a 26.5 x 0.9 mm band beside it. */
const at = (inputs: Partial<InputsOf<typeof steelInTheSection>>) =>
  evaluated(steelInTheSection, inputsAt(steelInTheSection, inputs, 'metric'));

describe('the steel in the section', () => {
  it('carries 3190 N a strand and 6380 N on the wheel at 110 MPa', () => {
    const values = at({});
    expect(values.area).toBeCloseTo(29e-6, 12);
    expect(values.strandForce).toBeCloseTo(3190, 6);
    expect(values.wheelForce).toBeCloseTo(6380, 6);
  });
  it('asks for 13.71 N·m by theory', () => expect(at({}).torque).toBeCloseTo(13.7064, 4));
  it('gives the other band the same stress when the torque above drag follows the section', () => {
    const { torque, otherTorque, area, otherArea, dragTorque } = at({});
    expect(otherArea).toBeCloseTo(23.85e-6, 12);
    expect((otherTorque - dragTorque) / (torque - dragTorque)).toBeCloseTo(otherArea / area, 12);
  });
  it('raises the stress in proportion when width is ground away and the torque stays', () => {
    const { sharpenedRise } = at({ sharpenings: 5 });
    expect(sharpenedRise).toBeCloseTo(29 / 28 - 1, 10);
    expect(at({ sharpenings: 0 }).sharpenedRise).toBeCloseTo(0, 12);
  });
  it('knows the catalogue’s width as too much, whatever the teeth', () =>
    expect(at({ toothDepth: 0.006 }).catalogueExcess).toBeCloseTo(6 / 29, 12));
});

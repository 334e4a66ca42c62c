/** The classroom rig as a workshop drawing: two views and a section through a grip (first angle), parts numbered as in the list. */
import type { FigureModule } from '../../../figures/figure.ts';
import { Sheet } from '../../../figures/Sheet.tsx';
import { teller } from '../../../figures/teller.ts';
import { classroomRig } from '../../../models/mills/rig-under-torque.ts';
import { FromAbove } from './FromAbove.tsx';
import { GripSection } from './GripSection.tsx';
import { rigLayout } from './layout.ts';
import { SideView } from './SideView.tsx';
import type { RigState } from './state.ts';

const say = teller(classroomRig);

function finding(state: RigState): string {
  const [torque, stress, stretch] = [
    say(state, 'torque'),
    say(state, 'stress', 2),
    say(state, 'stretch'),
  ];
  return `At ${torque} on its screw the strip should feel about ${stress}, and the dial move ${stretch}.`;
}

function description(state: RigState): string {
  return `A strip of band steel ${say(state, 'betweenGrips')} long between two grips, in a frame of two tubes and two end plates, seen from the side and from above. A screw pulls one grip through an end plate, a wrench turns its nut. A bar with a dial is clamped to the strip over ${say(state, 'gaugeLength')}. A section shows the strip between the two plates of a grip, with a bolt on either side.`;
}

function notes({ narrow }: RigState): readonly string[] {
  return [
    narrow ? 'drawn shorter between the grips' : 'to scale, the strip’s thickness drawn larger',
    'side view: the near tube is left out',
    'from above: plastic and wrench are left out',
    'A–A drawn larger',
  ];
}

function Drawing(state: RigState) {
  const layout = rigLayout(state.narrow);
  const length = (name: Parameters<typeof say>[1]) => say(state, name);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <SideView state={state} layout={layout} say={length} />
      <FromAbove layout={layout} say={length} />
      <GripSection idPrefix={state.idPrefix} layout={layout} say={length} />
    </Sheet>
  );
}

/** The figure of the rig's page. */
export const figure: FigureModule<typeof classroomRig> = { finding, description, notes, Drawing };

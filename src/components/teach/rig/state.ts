/** What the drawing of the classroom rig is drawn from. */
import type { FigureState } from '../../../figures/figure.ts';
import type { classroomRig } from '../../../models/mills/rig-under-torque.ts';

/** The rig under one torque. */
export type RigState = FigureState<typeof classroomRig>;

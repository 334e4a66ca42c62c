/** What is asked of the worker about plans: the plan that stands on the sheet, the series that was taken, and what would change them. */

import { type ChangeablePlan, planChanges, planLimits } from '../../core/plan.ts';
import {
  emptyWorksheet,
  loadName,
  type Worksheet,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import { readBox } from '../../form/box.ts';
import { FIELDS } from '../../form/fields.ts';
import type { QuantityUnder } from '../../form/paths.ts';
import type { PlanQuestion } from '../state/answers.ts';
import type { SheetView } from '../state/view.ts';
import { defaultTop } from './default-top.ts';
import {
  changedAsPrinted,
  loadShare,
  type Planned,
  type PlanTrouble,
  plannedFrom,
  RIGS,
} from './inputs.ts';
import { scaleOf } from './torques.ts';

/** A plan to be tried, and what is changed in it. */
export interface Offered {
  readonly change: ReturnType<typeof planChanges>[number]['change'];
  readonly question: PlanQuestion;
}

/** A plan, and others beside it. */
export interface PlanQuestions {
  readonly own: PlanQuestion;
  readonly offers: readonly Offered[];
}

type PlanBox = QuantityUnder<'plan'>;

/** What stands on the sheet of a plan, or what is wrong with it; undefined on the form as it is built. */
export function plannedOn(sheet: SheetView): Planned | PlanTrouble | undefined {
  const worksheet = sheet.worksheet();
  if (!worksheet) return undefined;
  const shown = sheet.shown();
  const isScrew = loadName(worksheet.tensioner) === 'torque';
  const value = (name: PlanBox) =>
    readBox(sheet.text(`plan.${name}`), FIELDS[`plan.${name}`], shown.system).value;
  const top = value(isScrew ? 'topTorque' : 'topPressure');
  const boxes = {
    top: top === undefined ? defaultTop(sheet) : { torque: top, from: 'typed' as const },
    firstTorque: value(isScrew ? 'firstTorque' : 'firstPressure'),
    steps: value('steps'),
    series: value('series'),
  };
  return plannedFrom(boxes, worksheet, scaleOf(shown));
}

type Known = Pick<PlanQuestion, 'worksheet' | 'measured' | 'stressAtTop'>;

function questionOf(plan: ChangeablePlan, known: Known): PlanQuestion {
  return { about: 'plan', key: JSON.stringify([plan, known]), plan, ...known };
}

type Same = (plan: ChangeablePlan) => ChangeablePlan;

/** A plan and its changes; `finished`: how a changed one is tried. */
function questionsOf(
  plan: ChangeablePlan,
  known: Known,
  longBar: number,
  finished: Same = (changed) => changed,
): PlanQuestions {
  const offers = planChanges(plan, longBar).map(({ change, plan: changed }) => ({
    change,
    question: questionOf(finished(changed), known),
  }));
  return { own: questionOf(plan, known), offers };
}

/** What the stress at a planned top torque hangs on. */
function hangsOn({ mill, band, tensioner, target }: Worksheet, load: number | undefined) {
  const use = { ...emptyWorksheet.use, [loadName(tensioner)]: load };
  return { ...emptyWorksheet, mill, band, tensioner, target, use };
}

/** The plan on the sheet, and what would help; undefined while there is none. */
export function planQuestions(sheet: SheetView): PlanQuestions | undefined {
  const [planned, worksheet] = [plannedOn(sheet), sheet.worksheet()];
  if (!worksheet || planned === undefined || typeof planned === 'string') return undefined;
  const scale = scaleOf(sheet.shown());
  const measured = sheet.result('measured');
  const known = {
    worksheet: hangsOn(worksheet, planned.topTorque),
    ...(measured?.ready && { measured }),
  };
  return questionsOf(planned.plan, known, RIGS[scale.system].longBar, (changed) =>
    changedAsPrinted(changed, planned, worksheet, scale),
  );
}

const clamped = (value: number, [least, most]: readonly [number, number]): number =>
  Math.min(most, Math.max(least, value));

/** The series that was taken, as if it had been planned; undefined where bar, dial or readings are missing. */
function taken(worksheet: Worksheet, { series }: WorksheetResults): ChangeablePlan | undefined {
  const { gaugeLength, graduation, readTo = graduation } = worksheet.rig;
  if (!series.ready || !gaugeLength || !graduation || !readTo) return undefined;
  const { topTorque } = series;
  const shares = series.torques.map((torque) => loadShare(torque, topTorque, worksheet));
  const loaded = shares.filter((share) => share > 0);
  const count = clamped(new Set(series.series).size, planLimits.series);
  return {
    gaugeLength,
    graduation,
    readTo,
    firstShare: clamped(Math.min(...loaded), planLimits.firstShare),
    steps: clamped(Math.round(loaded.length / count), planLimits.steps),
    series: count,
  };
}

/** What would help a measurement that is rough, or gives no stress; undefined where none is or nothing can be said. */
export function adviceQuestions(sheet: SheetView): PlanQuestions | undefined {
  const [worksheet, results] = [sheet.worksheet(), sheet.results()];
  const grade = results?.verdict.grade;
  if (!worksheet || !results || (grade !== 'rough' && grade !== 'none')) return undefined;
  const plan = taken(worksheet, results);
  if (!plan || !results.series.ready) return undefined;
  const { measured, series } = results;
  const known = {
    worksheet: hangsOn(worksheet, series.topTorque),
    ...(measured.ready && { stressAtTop: measured.stress }),
  };
  return questionsOf(plan, known, RIGS[sheet.shown().system].longBar);
}

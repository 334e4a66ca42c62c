/**
 * From the sheet as typed to the worksheet of the core: SI numbers where a box can be used, undefined where it is
 * empty or refused, and beside every box that is refused or unusual a sentence.
 * Units: SI out.
 * Source: definition.
 */
import type { InputValue, Worksheet, WorksheetReading } from '../core/worksheet.ts';
import { emptyWorksheet } from '../core/worksheet.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { type BoxReading, readBox } from './box.ts';
import { typedAt } from './edits.ts';
import { fieldAt, WORKSHEET_FIELDS } from './fields.ts';
import type { WorksheetText } from './text.ts';
import { typedPaths } from './units.ts';

/** A sheet that has been read. */
export interface WorksheetRead {
  readonly worksheet: Worksheet;
  /** Why a box cannot be used, by its path. */
  readonly refusals: Readonly<Record<string, string>>;
  /** What is unusual about a box that is used all the same, by its path. */
  readonly doubts: Readonly<Record<string, string>>;
}

type Values = (path: string) => InputValue;

function band(value: Values): Worksheet['band'] {
  return {
    bodyWidth: value('band.bodyWidth'),
    widthOverTeeth: value('band.widthOverTeeth'),
    thickness: value('band.thickness'),
    youngsModulus: value('band.youngsModulus'),
    youngsModulusHalfWidth: value('band.youngsModulusHalfWidth'),
  };
}

function tensioner({ choices, designation }: WorksheetText, value: Values): Worksheet['tensioner'] {
  const at = (name: string) => value(`tensioner.${name}`);
  const outsideDiameter = at('thread.outsideDiameter');
  return {
    thread:
      choices.thread === 'own'
        ? { kind: 'own', form: choices.form, outsideDiameter, pitch: at('thread.pitch') }
        : { kind: 'designation', designation },
    starts: at('starts'),
    friction: { kind: choices.losses, low: at('friction.low'), high: at('friction.high') },
    collar:
      choices.collar === 'none'
        ? undefined
        : {
            friction: at('collar.friction'),
            outerDiameter: at('collar.outerDiameter'),
            innerDiameter: at('collar.innerDiameter'),
          },
    advantage: at('advantage'),
    dragTorque: at('dragTorque'),
    dragTorqueUncertainty: at('dragTorqueUncertainty'),
  };
}

function rig({ choices }: WorksheetText, value: Values): Worksheet['rig'] {
  return {
    gaugeLength: value('rig.gaugeLength'),
    gaugeLengthHalfWidth: value('rig.gaugeLengthHalfWidth'),
    graduation: value('rig.graduation'),
    readTo: value('rig.readTo'),
    dialRunsBackwards: choices.dial === 'backwards',
    travelPerTurn: value('rig.travelPerTurn'),
    barMaterial: choices.bar,
    repeatability: value('rig.repeatability'),
    barHeight: value('rig.barHeight'),
    barWeight: value('rig.barWeight'),
  };
}

function reading(value: Values, row: string): WorksheetReading {
  return {
    torque: value(`${row}.torque`),
    dial: value(`${row}.dial`),
    wholeTurns: value(`${row}.wholeTurns`),
    turns: value(`${row}.turns`),
  };
}

function assembled(text: WorksheetText, value: Values): Worksheet {
  return {
    ...emptyWorksheet,
    label: text.label,
    mill: {
      wheelDiameter1: value('mill.wheelDiameter1'),
      wheelDiameter2: value('mill.wheelDiameter2'),
      centreDistance: value('mill.centreDistance'),
    },
    band: band(value),
    tensioner: tensioner(text, value),
    rig: rig(text, value),
    readings: text.readings.map((_, i) => reading(value, `readings.${i}`)),
    ways: text.ways.map((way, i) => ({
      name: way.name,
      torque: value(`ways.${i}.torque`),
      readings: way.readings.map((_, j) => ({
        dial: value(`ways.${i}.readings.${j}.dial`),
        wholeTurns: value(`ways.${i}.readings.${j}.wholeTurns`),
      })),
    })),
    target: {
      stress: value('target.stress'),
      makerLimitStress: value('target.makerLimitStress'),
      makerLimitWheelForce: value('target.makerLimitWheelForce'),
      yieldStrength: value('target.yieldStrength'),
    },
    otherBand:
      text.choices.otherBand === 'none'
        ? undefined
        : {
            bodyWidth: value('otherBand.bodyWidth'),
            thickness: value('otherBand.thickness'),
            targetStress: value('otherBand.targetStress'),
          },
  };
}

/** The worksheet that a sheet as typed comes to, with the sentences beside its boxes. Never throws. */
export function readWorksheet(text: WorksheetText, system: UnitSystem): WorksheetRead {
  const paths = new Set([...typedPaths(text), ...Object.keys(WORKSHEET_FIELDS)]);
  const found = new Map<string, BoxReading>();
  for (const path of paths) {
    const field = fieldAt(path);
    if (field) found.set(path, readBox(typedAt(text, path), field, system));
  }
  const sentences = (name: 'refusal' | 'doubt') =>
    Object.fromEntries([...found].flatMap(([path, box]) => (box[name] ? [[path, box[name]]] : [])));
  return {
    worksheet: assembled(text, (path) => found.get(path)?.value),
    refusals: sentences('refusal'),
    doubts: sentences('doubt'),
  };
}

/**
 * What is being worked on, and the commands that change it: there is no other way. A project holds what is typed, and
 * the unit system in which its bare numbers are meant.
 */
import { typedOf, type WorksheetDocument } from '../../form/document.ts';
import type { ChoicePath, FieldPath, ListPath } from '../../form/paths.ts';
import type { Aside } from '../../form/set-aside.ts';
import {
  blank,
  type Typed,
  withNewRow,
  without,
  withoutRow,
  withTexts,
  withTyped,
} from '../../form/typed.ts';
import { bareUnits, inUnits } from '../../form/units.ts';
import type { UnitSystem } from '../../units/kinds.ts';

/** A project at one moment. */
export interface Project {
  readonly typed: Typed;
  readonly system: UnitSystem;
  /** What came with it and cannot stand on the form, until the reader has seen it. */
  readonly aside?: Aside;
}

/** What can be done to a project. */
export type Command =
  | { readonly do: 'type'; readonly path: FieldPath; readonly text: string }
  | { readonly do: 'choose'; readonly path: ChoicePath; readonly text: string }
  | {
      readonly do: 'fill'; // several boxes at once, from one on
      readonly path: FieldPath;
      readonly texts: readonly (readonly [path: string, text: string])[];
    }
  | { readonly do: 'clear'; readonly path: FieldPath | ListPath }
  | { readonly do: 'addRow' | 'removeRow'; readonly path: ListPath; readonly row: number }
  | { readonly do: 'load'; readonly document: WorksheetDocument }
  | { readonly do: 'seen' }
  | { readonly do: 'units'; readonly system: UnitSystem };

/** A project with nothing in it. */
export const emptyProject = (system: UnitSystem): Project => ({ typed: blank, system });

/** The same project with its bare numbers meant in another system: what they mean stays. */
export function inSystem(project: Project, system: UnitSystem): Project {
  if (system === project.system) return project;
  const typed = inUnits(project.typed, bareUnits(project.system), bareUnits(system));
  return { ...project, typed, system };
}

type OfBoxes = Exclude<Command, { do: 'units' | 'load' | 'seen' }>;

function typedAfter(typed: Typed, command: OfBoxes): Typed {
  switch (command.do) {
    case 'type':
    case 'choose':
      return withTyped(typed, command.path, command.text);
    case 'fill':
      return withTexts(typed, command.texts);
    case 'clear':
      return without(typed, command.path);
    case 'addRow':
      return withNewRow(typed, command.path, command.row);
    case 'removeRow':
      return withoutRow(typed, command.path, command.row);
  }
}

function loaded(document: WorksheetDocument, system: UnitSystem): Project {
  const typed = typedOf(document, bareUnits(system));
  return { typed, system, ...(document.aside && { aside: document.aside }) };
}

/** The project after a command; the same one where the command changes nothing. Never throws. */
export function apply(project: Project, command: Command): Project {
  const { aside, ...rest } = project;
  if (command.do === 'units') return inSystem(project, command.system);
  if (command.do === 'load') return loaded(command.document, project.system);
  if (command.do === 'seen') return aside ? rest : project;
  const typed = typedAfter(project.typed, command);
  return typed === project.typed ? project : { ...project, typed };
}

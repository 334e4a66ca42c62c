/**
 * What is being worked on, and the commands that change it: there is no other way. A project holds what is typed, and
 * the unit system in which its bare numbers are meant.
 */
import { type TextTable, typedOf, type WorksheetDocument } from '../../form/document.ts';
import type { ChoicePath, FieldPath, ListPath } from '../../form/paths.ts';
import {
  blank,
  type Typed,
  withNewRow,
  without,
  withoutRow,
  withPasted,
  withTyped,
} from '../../form/typed.ts';
import { bareUnits, inUnits } from '../../form/units.ts';
import type { UnitSystem } from '../../units/kinds.ts';

/** A project at one moment. */
export interface Project {
  readonly typed: Typed;
  readonly system: UnitSystem;
}

/** What can be done to a project. */
export type Command =
  | { readonly do: 'type'; readonly path: FieldPath; readonly text: string }
  | { readonly do: 'choose'; readonly path: ChoicePath; readonly text: string }
  | { readonly do: 'paste'; readonly path: FieldPath; readonly cells: TextTable }
  | { readonly do: 'clear'; readonly path: FieldPath | ListPath }
  | { readonly do: 'addRow' | 'removeRow'; readonly path: ListPath; readonly row: number }
  | { readonly do: 'load'; readonly document: WorksheetDocument }
  | { readonly do: 'units'; readonly system: UnitSystem };

/** A project with nothing in it. */
export const emptyProject = (system: UnitSystem): Project => ({ typed: blank, system });

/** The same project with its bare numbers meant in another system: what they mean stays. */
export function inSystem(project: Project, system: UnitSystem): Project {
  if (system === project.system) return project;
  const typed = inUnits(project.typed, bareUnits(project.system), bareUnits(system));
  return { typed, system };
}

function typedAfter({ typed, system }: Project, command: Exclude<Command, { do: 'units' }>): Typed {
  switch (command.do) {
    case 'type':
    case 'choose':
      return withTyped(typed, command.path, command.text);
    case 'paste':
      return withPasted(typed, command.path, command.cells);
    case 'clear':
      return without(typed, command.path);
    case 'addRow':
      return withNewRow(typed, command.path, command.row);
    case 'removeRow':
      return withoutRow(typed, command.path, command.row);
    case 'load':
      return typedOf(command.document, bareUnits(system));
  }
}

/** The project after a command; the same one where the command changes nothing. Never throws. */
export function apply(project: Project, command: Command): Project {
  if (command.do === 'units') return inSystem(project, command.system);
  const typed = typedAfter(project, command);
  return typed === project.typed ? project : { ...project, typed };
}

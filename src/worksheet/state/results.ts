/** What the sheet comes to, part by part: a key does again only what hangs on its box. */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import {
  emptyWorksheet,
  resultsOf,
  type Worksheet,
  type WorksheetResults,
  worksheetChain,
  worksheetMeasurement,
} from '../../core/worksheet.ts';
import { sheetReader, type WorksheetRead } from '../../form/reading.ts';
import { lasting } from './lasting.ts';
import type { Project } from './project.ts';

/** The sheet as read, and its results. */
export interface Reckoning {
  readonly read: ReadonlySignal<WorksheetRead>;
  readonly results: ReadonlySignal<WorksheetResults>;
}

/** The reckoning of a project as it changes. */
export function reckon(project: ReadonlySignal<Project>): Reckoning {
  const readSheet = sheetReader();
  const read = lasting(() => readSheet(project.value.typed, project.value.system));
  const parts = <Name extends keyof Worksheet>(...names: readonly Name[]) => {
    const signals = names.map(
      (name) => [name, computed(() => read.value.worksheet[name])] as const,
    );
    return (): Worksheet => ({
      ...emptyWorksheet,
      ...Object.fromEntries(signals.map(([name, { value }]) => [name, value])),
    });
  };
  const ofScrew = parts('mill', 'band', 'tensioner');
  const ofReadings = parts('band', 'tensioner', 'rig', 'readings');
  const chain = computed(() => worksheetChain(ofScrew()));
  const measurement = computed(() => worksheetMeasurement(ofReadings()));
  const results = lasting(() => resultsOf(read.value.worksheet, chain.value, measurement.value));
  return { read, results };
}

/** Guards. */

/** A caution or a stop; `fields` are the boxes it is about. */
export interface WorksheetGuard {
  readonly code: string;
  readonly level: 'stop' | 'warn';
  readonly values: Readonly<Record<string, number>>;
  readonly fields: readonly string[];
}

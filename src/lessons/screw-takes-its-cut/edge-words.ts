/** The names at the edges of the table, in the words of the model: the table's heading says them again. Units: none. */

/** The names of the rows and of the columns. */
export const EDGES = {
  torque: 'torque above the no-load torque',
  efficiency: 'efficiency of the screw',
} as const;

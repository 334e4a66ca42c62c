/** What stands at the edges of the table, in the words of the model: the figure says it again. Units: none. */

/** The names of the rows and of the columns. */
export const EDGES = {
  torque: 'torque on the handle, above drag',
  efficiency: 'efficiency of the screw',
} as const;

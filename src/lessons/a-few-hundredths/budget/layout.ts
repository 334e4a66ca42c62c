/** Where the bars of the budget stand, on a wide page and on a phone, in units of the drawing. */

/** One layout. */
export interface BudgetLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** From where to where the scale of the bars runs; where the numbers end. */
  readonly left: number;
  readonly right: number;
  readonly numbers: number;
  /** Top of the bar of all together, and of the largest cause; from one cause to the next; height of a bar. */
  readonly whole: number;
  readonly first: number;
  readonly step: number;
  readonly thick: number;
}

const layouts: Readonly<Record<'wide' | 'phone', BudgetLayout>> = {
  wide: {
    width: 880,
    height: 300,
    narrow: false,
    left: 270,
    right: 780,
    numbers: 876,
    whole: 8,
    first: 62,
    step: 38,
    thick: 18,
  },
  phone: {
    width: 360,
    height: 276,
    narrow: true,
    left: 4,
    right: 356,
    numbers: 356,
    whole: 20,
    first: 68,
    step: 38,
    thick: 12,
  },
};

/** The layout for a width of screen. */
export function budgetLayout(narrow: boolean): BudgetLayout {
  return narrow ? layouts.phone : layouts.wide;
}

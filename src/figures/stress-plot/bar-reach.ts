/** Standard uncertainties to each side that an error bar is drawn long, about 95 %. Source: convention. */
export const BAR_REACH = 2;

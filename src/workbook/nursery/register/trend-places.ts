import { LAST_LINE } from "./columns";

/** The last so many audits of the chosen block. */
export const TREND_LINES = 12;
export const TREND_TOP = LAST_LINE + 2;
export const CHOICE = TREND_TOP + 1;
export const HEADINGS = TREND_TOP + 3;
export const FIRST = HEADINGS + 1;
export const LAST = FIRST + TREND_LINES - 1;
export const CHARTS_TOP = LAST + 2;
export const CHART_ROWS = 18;
export const TREND_BOTTOM = CHARTS_TOP + CHART_ROWS;
export const BASIS = "A";
export const AS_LATEST = "as the latest";

/** Version of the audit workbook's sheets, names and formulas. */
export const WORKBOOK_VERSION = "1.2";

/** Version of the nursery plan's. */
export const PLAN_VERSION = "1.1";

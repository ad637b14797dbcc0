/** Version of the audit workbook's sheets, names and formulas. */
export const WORKBOOK_VERSION = "1.0";

const QUOTED_OR_STORED = /"(?:[^"]|"")*"|'(?:[^']|'')*'|_xldudf_CANFALL_([A-Z0-9_]+)(?=\()/gi;

/**
 * A formula with the names that Excel stores in files and shows while the functions are not registered
 * (`_xldudf_CANFALL_SC_CAN`) turned into the names that people type (`CANFALL.SC.CAN`).
 * Our names hold no underscore, so each one is for a dot. Text and sheet names in quotes stay as they are.
 */
export function typedNames(formula: string): string {
  return formula.replace(QUOTED_OR_STORED, (match, stored: string | undefined) =>
    stored === undefined ? match : `CANFALL.${stored.replaceAll("_", ".")}`,
  );
}

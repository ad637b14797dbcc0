/** The desk's own CustomFunctions: it keeps what the functions' modules associate until the grid can take them. */

type WorksheetFunction = (...given: unknown[]) => unknown;

const ERROR_CODES = {
  divisionByZero: "#DIV/0!",
  invalidName: "#NAME?",
  invalidNumber: "#NUM!",
  invalidReference: "#REF!",
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  nullReference: "#NULL!",
} as const;

export class FunctionError extends Error {
  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
  }
}

export const associated = new Map<string, WorksheetFunction>();

Object.assign(globalThis, {
  CustomFunctions: {
    ErrorCode: ERROR_CODES,
    Error: FunctionError,
    associate: (id: string, work: WorksheetFunction) => associated.set(id, work),
  },
});

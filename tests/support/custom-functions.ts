/** The part of Excel's CustomFunctions global that the worksheet functions use. */
enum ErrorCode {
  invalidValue = "#VALUE!",
  notAvailable = "#N/A",
  divisionByZero = "#DIV/0!",
  invalidNumber = "#NUM!",
  nullReference = "#NULL!",
  invalidName = "#NAME?",
  invalidReference = "#REF!",
}

class CellError extends Error {
  readonly type = "Error";
  readonly code: string;

  constructor(code?: string, message?: string) {
    super(message ?? "");
    this.code = code ?? ErrorCode.invalidValue;
  }
}

/** Puts a small CustomFunctions in place; the answer lists what has been associated. */
export function fakeCustomFunctions(): Map<string, unknown> {
  const associated = new Map<string, unknown>();
  const associate = (id: string, work: unknown) => associated.set(id, work);
  Object.assign(globalThis, { CustomFunctions: { Error: CellError, ErrorCode, associate } });
  return associated;
}

/** What a cell shows after a call: its value, or the code and message of a cell error. Anything else is thrown on. */
export function cell(work: () => unknown): unknown {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    return { error: error.code, message: error.message };
  }
}

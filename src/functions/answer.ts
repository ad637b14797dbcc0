import { InputError } from "../core/errors";

/** Runs the work of a worksheet function; an InputError becomes a cell error with its message, a bug stays a bug. */
export function answer<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { notAvailable, invalidValue } = CustomFunctions.ErrorCode;
    throw new CustomFunctions.Error(error.missing ? notAvailable : invalidValue, error.message);
  }
}

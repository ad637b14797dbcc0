import { InputError } from "../core/errors";

/** What core gives, and null where it refuses what was typed. */
export function orNull<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

const LONGEST_TEXT = 40;

/** An error in place of a value, by its name in a cell: `#N/A`. */
export class ErrorValue {
  constructor(readonly name: string) {}
}

/** What was got in words of ours, without quotes: `19 rows and 1 column`. */
export class Described {
  constructor(readonly words: string) {}
}

/** What an InputError can say besides parameter, rule and value. */
export interface InputErrorOptions {
  /** Where the value is, such as "row 4, column 1". */
  place?: string;
  /** True when the inputs are right but cannot give an answer. */
  missing?: boolean;
}

/** An input that breaks a rule; the message reads `PARAMETER must RULE, got VALUE[ in PLACE]`. */
export class InputError extends Error {
  readonly parameter: string;
  readonly rule: string;
  readonly value: unknown;
  readonly place?: string;
  readonly missing: boolean;

  constructor(parameter: string, rule: string, value: unknown, options: InputErrorOptions = {}) {
    super(`${parameter} must ${rule}, got ${valueWords(value)}${options.place ? ` in ${options.place}` : ""}`);
    this.name = "InputError";
    this.parameter = parameter;
    this.rule = rule;
    this.value = value;
    this.missing = options.missing ?? false;
    if (options.place) this.place = options.place;
  }

  /** The same error at a place that only the caller knows. */
  at(place: string): InputError {
    return new InputError(this.parameter, this.rule, this.value, { place, missing: this.missing });
  }
}

function valueWords(value: unknown): string {
  if (typeof value === "string") {
    return value.length > LONGEST_TEXT ? `"${value.slice(0, LONGEST_TEXT)}…"` : `"${value}"`;
  }
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === null || value === undefined) return "a blank cell";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "number") return String(value);
  if (value instanceof ErrorValue) return value.name;
  if (value instanceof Described) return value.words;
  return "a linked value";
}

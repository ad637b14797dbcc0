import { ValueObjectFactory } from "@univerjs/preset-sheets-core";

const MOST_TEXTS = 100_000;

/** Each time the grid meets a text in a formula it tries to read a date from it: a text that holds none is known by then. */
export function mendPlainTexts(): void {
  const plain = new Set<unknown>();
  const { create } = ValueObjectFactory;
  ValueObjectFactory.create = (text, asText = false) => {
    if (typeof text !== "string" || asText) return create(text, asText);
    if (plain.has(text)) return create(text, true);
    const value = create(text, false);
    if (value.isString() && plain.size < MOST_TEXTS) plain.add(text);
    return value;
  };
}

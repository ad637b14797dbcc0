import { StringValueObject, ValueObjectFactory } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

const MOST_TEXTS = 100_000;

/** Tries a text once. */
export const plainTexts: Fix = {
  name: "plain-texts",
  wrong: "Each time the grid meets a text in a formula it tries to read a date from it: calculation is slow.",
  seen: "0.25.1",
  members: () => [
    ["ValueObjectFactory", ValueObjectFactory, "create"],
    ["StringValueObject", StringValueObject.prototype, "convertToNumberObjectValue"],
  ],
  mend() {
    const plain = new Set<unknown>();
    const { create } = ValueObjectFactory;
    ValueObjectFactory.create = (text, asText = false) => {
      if (typeof text !== "string" || asText) return create(text, asText);
      if (plain.has(text)) return create(text, true);
      const value = create(text, false);
      if (value.isString() && plain.size < MOST_TEXTS) plain.add(text);
      return value;
    };
    const { convertToNumberObjectValue } = StringValueObject.prototype;
    const noNumbers = new Map<string, ReturnType<typeof convertToNumberObjectValue>>();
    StringValueObject.prototype.convertToNumberObjectValue = function () {
      const text = this.getValue();
      const before = noNumbers.get(text);
      if (before) return before;
      const value = convertToNumberObjectValue.call(this);
      if (value.isError() && noNumbers.size < MOST_TEXTS) noNumbers.set(text, value);
      return value;
    };
  },
};

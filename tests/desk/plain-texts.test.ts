import { StringValueObject } from "@univerjs/engine-formula";
import { expect, test, vi } from "vitest";
import { plainTexts } from "../../src/desk/univer-fixes/typing/plain-texts";

// the presets hand on what the engine exports, and the page with it
vi.mock("@univerjs/preset-sheets-core", () => import("@univerjs/engine-formula"));

test("plain-texts: a text is tried as a number once, and still is one where it can be", () => {
  const tries = vi.spyOn(StringValueObject.prototype, "convertToNumberObjectValue");
  if (process.env.WITHOUT !== plainTexts.name) plainTexts.mend({} as never);
  const number = (text: string) => StringValueObject.create(text).convertToNumberObjectValue();
  expect([number("Bed 7").isError(), number("Bed 7").isError()]).toEqual([true, true]);
  expect(tries).toHaveBeenCalledTimes(1);
  expect(number("2020-01-01").getValue()).toBe(43_831); // days from 1899-12-30
});

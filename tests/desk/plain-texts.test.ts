import { StringValueObject } from "@univerjs/engine-formula";
import { expect, test, vi } from "vitest";
import { plainTexts } from "../../src/desk/univer-fixes/plain-texts";

// the presets hand on what the engine exports, and the page with it
vi.mock("@univerjs/preset-sheets-core", () => import("@univerjs/engine-formula"));

test("plain-texts: a text is tried as a number once, and still is one where it can be", () => {
  if (process.env.WITHOUT !== plainTexts.name) plainTexts.mend({} as never);
  const tried = (text: string) => StringValueObject.create(text).convertToNumberObjectValue();
  expect(tried("Bed 7").isError()).toBe(true);
  expect(tried("Bed 7")).toBe(tried("Bed 7"));
  expect(tried("2020-01-01").getValue()).toBe(43_831); // days from 1899-12-30
});

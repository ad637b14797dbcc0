import { expect, it } from "vitest";
import { namesIn } from "../../support/calls";
import { caseFiles } from "../../support/case-files";
import { DEMAND } from "./core";

it("FAO-56 prints a value for every function of the family but the plain arithmetic", () => {
  const cases = caseFiles().flatMap((file) => (file.name.startsWith("fao56-") ? file.cases : []));
  const checked = new Set(cases.flatMap(namesIn));
  expect(Object.keys(DEMAND).filter((name) => !checked.has(name))).toEqual(["potDepth", "radians"]);
});

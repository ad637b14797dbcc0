import { expect, test } from "vitest";
import { nameInGrid, OwnNames } from "../../src/desk/files/own-names";

test("a name means what it means on its own sheet, or on the sheet that is named before it", () => {
  const sheets = [
    { key: "file-1-1", name: "Beds" },
    { key: "file-1-2", name: "It's 2" },
  ];
  const own = new OwnNames(
    sheets.map(({ key }) => ({ key, name: "Rate", inGrid: nameInGrid("Rate", key) })),
    sheets,
  );
  expect(own.translated('=rate*2+"Rate"&Rate.x', "file-1-1")).toBe('=Rate_file_1_1*2+"Rate"&Rate.x');
  expect(own.translated("=SUM(Rate,'It''s 2'!Rate)", "file-1-1")).toBe("=SUM(Rate_file_1_1,Rate_file_1_2)");
  expect(own.translated("=Rate", "file-1-3")).toBe("=Rate");
});

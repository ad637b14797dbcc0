import { expect, it } from "vitest";
import { titleLines } from "../../src/taskpane/map/picture/plot";

it("a long title of a picture takes two lines, and ends in … where even those are too short", () => {
  expect(titleLines("Example Nursery, block 7")).toEqual(["Example Nursery, block 7"]);
  const long = "The Example Nursery of the Long Valley beside the Great Northern Road, block 12";
  expect(titleLines(long).join(" ")).toBe(long);
  const longer = titleLines(`${long}, the long one behind the propagation house on the north side`);
  expect(longer).toHaveLength(2);
  expect(longer[1]).toMatch(/ …$/);
  expect(longer.every((line) => line.length <= 56)).toBe(true);
  expect(titleLines("x".repeat(90)).map((line) => line.length)).toEqual([56, 34]);
});

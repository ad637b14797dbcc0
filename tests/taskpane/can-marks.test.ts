import { expect, it } from "vitest";
import { isAbove } from "../../src/taskpane/map/picture/can-marks";
import { plotOf } from "../../src/taskpane/map/picture/plot";

// 11 m in 332 px: half a metre is 15 px, about as far as a can is from its rate
const plot = plotOf({ left: 0, top: 0, right: 11, bottom: 15 });
const can = { x: 6, y: 9.5 };

it.each([
  ["no head is near", [], false],
  ["a head is under the can", [{ x: 6, y: 10 }], true],
  ["a head is above the can", [{ x: 6, y: 9.1 }], false],
  [
    "heads are on both sides",
    [
      { x: 6, y: 9.1 },
      { x: 6, y: 10 },
    ],
    false,
  ],
  ["a head is beside the rate", [{ x: 7, y: 10 }], false],
])("where %s, the rate of a can is written above it: %j, %j", (_, heads, above) => {
  expect(isAbove(can, heads, plot)).toBe(above);
});

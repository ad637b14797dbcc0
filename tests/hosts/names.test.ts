import { expect, test } from "vitest";
import { plainAddress } from "../../src/cells/letters";
import { typedNames } from "../../src/cells/stored-name";

test.each([
  ["Sheet1!A1", "A1"],
  ["'It''s ! block 7'!$A$1:$B$2", "A1:B2"],
  ["$A:$A", "A:A"],
])("the address %s is plainly %s", (address, plain) => {
  expect(plainAddress(address)).toBe(plain);
});

test.each([
  ["=_xldudf_CANFALL_SC_CAN(B2:B26)", "=CANFALL.SC.CAN(B2:B26)"],
  [
    "=1+_XLDUDF_CANFALL_MAR(_xldudf_CANFALL_DEPTH_CAUGHT(A1,B1),3,4)",
    "=1+CANFALL.MAR(CANFALL.DEPTH.CAUGHT(A1,B1),3,4)",
  ],
  ["=CANFALL.SC.CAN(B2:B26)", "=CANFALL.SC.CAN(B2:B26)"],
  ['="_xldudf_CANFALL_SC_CAN(1)"', '="_xldudf_CANFALL_SC_CAN(1)"'],
  ["='_xldudf_CANFALL_A(1)'!A1", "='_xldudf_CANFALL_A(1)'!A1"],
])("the formula %s is typed as %s", (stored, typed) => {
  expect(typedNames(stored)).toBe(typed);
});

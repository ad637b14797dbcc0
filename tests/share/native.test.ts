import { describe, expect, it } from "vitest";
import { nativeCells, nativeFormula } from "../../src/share/copy/native-formula";
import { sameFormula } from "../../src/share/same-formula";

const sound = (r: string) =>
  `SUMPRODUCT(ISTEXT(${r})*(TRIM(${r})<>"x")*(TRIM(${r})<>"")+ISLOGICAL(${r})+ISNUMBER(${r})*(${r}<0))=0`;
const sc = (r: string) => `IF(${sound(r)},AVERAGE(${r})/MIN(${r}),"readings must be numbers of 0 or more, or x")`;

describe("formulas that call the add-in", () => {
  it.each([
    ["as stored in files", "_xldudf_CANFALL_SC_CAN(B2:B26)", sc("B2:B26")],
    ["as typed, in any case", "canfall.Sc.Can(B2:B26)", sc("B2:B26")],
    ["with the guard of blank cells", 'CANFALL.SC.CAN(IF(B2:B26="","x",B2:B26))', sc("B2:B26")],
    ["on a sheet in quotes", "CANFALL.SC.CAN('Bed, 7'!B2:B26)", sc("'Bed, 7'!B2:B26")],
    ["nested in others", 'IF(A1>0,CANFALL.SC.CAN(r)*2,"a, b")', `IF(A1>0,${sc("r")}*2,"a, b")`],
    ["with an implicit intersection", "1+@CANFALL.SC.CAN(r)", `1+${sc("r")}`],
    ["in SINGLE", "_xlfn.SINGLE(_xldudf_CANFALL_SC_CAN(r))", sc("r")],
    ["bracketed beside operators", "CANFALL.POT.DEPTH(300,200)^2", "(1000*300/(PI()*200^2/4))^2"],
    ["left alone where they call none of ours", "SUM(A1 , B2:C3 B2:C9)", "SUM(A1 , B2:C3 B2:C9)"],
  ])("become native ones: %s", (_, formula, native) => {
    expect(nativeFormula(formula)).toEqual({ formula: native, array: false });
  });

  it("become array formulas where their readings are no plain reference", () => {
    expect(nativeFormula("AVERAGE(CANFALL.DEPTH.CAUGHT(A1:A3,80))")).toEqual({
      formula: 'AVERAGE(IF(ISNUMBER(A1:A3),A1:A3*1000/(PI()*80^2/4),""))',
      array: true,
    });
  });

  it("name the rectangle of a spill that goes", () => {
    const spillOf = (reference: string) => (reference === "D1" ? "D1:D9" : null);
    expect(nativeFormula("SUM(D1#)", spillOf)?.formula).toBe("SUM(D1:D9)");
    expect(nativeFormula("SUM(_xlfn.ANCHORARRAY(D1))", spillOf)?.formula).toBe("SUM(D1:D9)");
    expect(nativeFormula("SUM(E1#)", spillOf)?.formula).toBe("SUM(E1#)");
  });

  it.each(["CANFALL.SC.PATCH(A1:E5,0.1)", "ROUND(CANFALL.SC.PATCH(A1:E5,0.1),2)", "CANFALL.SC.CAN(A1:A3"])(
    "have no native form: %s",
    (formula) => {
      expect(nativeFormula(formula)).toBeNull();
    },
  );

  it("are cell by cell where each reading has an answer", () => {
    const native = nativeCells('CANFALL.RATE.CAUGHT(IF(A1:A2="","x",A1:A2),15,"mm")', () => ["A1", "A2"]);
    expect(native).toEqual(['IF(ISNUMBER(A1),A1*1*60/15,"")', 'IF(ISNUMBER(A2),A2*1*60/15,"")']);
  });
});

describe("two formulas", () => {
  it.each([
    ["IF(a1>=0.5,TRUE,'Bed 7'!B2)", "IF(A1 >= .50, TRUE(), 'Bed 7'!$B$2)"],
    ["SUM($A:$A)", "SUM($A$1:$A$1048576)"],
    ["_xlfn.STDEV.S(Cans_Readings)", "STDEV.S(CANS_READINGS)"],
    ["MAX(1E-9,2)", "MAX(0.000000001,2)"],
    ["Cans!A1", "A1"],
  ])("say the same: %s and %s", (one, other) => {
    expect(sameFormula(one, other, "Cans")).toBe(true);
  });

  it.each([
    ["A1+1", "A1+2"],
    ["A1", "A2"],
    ['"a b"', '"ab"'],
    ["A1:B2 B1:C3", "A1:B2,B1:C3"],
    ["A1-1", "A1*-1"],
  ])("say something else: %s and %s", (one, other) => {
    expect(sameFormula(one, other, "Cans")).toBe(false);
  });
});

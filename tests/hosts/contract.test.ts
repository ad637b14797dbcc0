import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { contract, runContract, SCRATCH_SHEET } from "../../src/hosts/contract/contract";
import { same } from "../../src/hosts/contract/trial-sheet";
import { type Host, PLAIN_SEPARATORS } from "../../src/hosts/host";
import { Snapshot } from "../../src/hosts/snapshot";

/** A host that forgets everything written. */
function forgetful(sheets: string[]): Host {
  const area = { sheet: "Sheet1", address: "A1" };
  return {
    label: "forgetful",
    platform: "nowhere",
    opened: "",
    saves: true,
    openPage: () => {},
    slow: () => () => {},
    separators: async () => PLAIN_SEPARATORS,
    snapshot: async () =>
      new Snapshot({
        book: "the one",
        sheets,
        calculating: false,
        selection: { area, cells: [[null]], inputs: null },
        held: [],
      }),
    selection: async () => area,
    select: async () => {},
    watch: async () => async () => {},
    read: async () => [[null]],
    inputs: async () => [[""]],
    write: async () => {},
    writeTogether: async () => {},
    writeKept: async () => {},
    named: async () => null,
    sheets: async () => sheets,
    used: async () => null,
    addSheet: async (name) => void sheets.push(name),
    removeSheet: async (name) => void sheets.splice(sheets.indexOf(name), 1),
    settled: async () => {},
    bytes: async () => new Uint8Array(),
    insertSheets: async () => "",
    openBook: async () => true,
    deliver: async () => "Gone.",
    placePicture: async () => {},
    removePicture: async () => {},
    pictures: async () => [],
  };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

async function runAtOnce(host: Host): ReturnType<typeof runContract> {
  const results = runContract(host);
  await vi.runAllTimersAsync();
  return results;
}

describe("the contract", () => {
  test("names each check once", () => {
    const names = contract.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  test("says what a host does wrong, and removes its sheets all the same", async () => {
    const sheets = ["Sheet1"];
    const results = await runAtOnce(forgetful(sheets));
    expect(results.find(({ name }) => name === "text comes back as text")).toEqual({
      name: "text comes back as text",
      error: 'expected [["x","12 ml"]], got [[null]]',
    });
    expect(results.filter(({ error }) => !error).map(({ name }) => name)).toEqual([
      "a name that nobody defined is null",
      "a defined name leads to a sheet that exists",
      "a snapshot says that nothing is calculating once all is calculated",
    ]);
    expect(sheets).toEqual(["Sheet1"]);
  });

  test("touches no sheet that was there before", async () => {
    const sheets = ["Sheet1", SCRATCH_SHEET];
    const results = await runAtOnce(forgetful(sheets));
    const message = `there is already a sheet "${SCRATCH_SHEET}": delete it and start again`;
    expect(new Set(results.map(({ error }) => error))).toEqual(new Set([message]));
    expect(sheets).toEqual(["Sheet1", SCRATCH_SHEET]);
  });
});

describe("the comparison", () => {
  test("takes the order of an area's parts as it comes", () => {
    same({ sheet: "a", address: "A1" }, { address: "A1", sheet: "a" });
  });

  test("tells NaN from a blank cell", () => {
    expect(() => same([Number.NaN], [null])).toThrow('expected [null], got ["NaN"]');
  });

  test("tells numbers that differ in the last bit", () => {
    expect(() => same(0.1 + 0.2, 0.3)).toThrow("expected 0.3, got 0.30000000000000004");
  });
});

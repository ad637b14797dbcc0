// @vitest-environment jsdom
import { act } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/pane";
import { screen } from "../support/screen";
import { at, bedHost } from "./bed";

const FORMULA = '=CANFALL.SC.CAN(IF(B2:B7="","x",B2:B7))';
let page: Awaited<ReturnType<typeof screen>>;
let host: ReturnType<typeof bedHost>;

async function open(measure = "2") {
  host = bedHost({ H2: "a note" });
  await host.select(at("B2:B7"));
  page = await screen(<Pane host={host} functions={[]} />);
  await page.shows("Driest can");
  await page.type("Measure", measure);
}

const input = async (address: string) => (await host.inputs(at(address)))[0]![0];
afterEach(() => page.close());

describe("inserting from the pane", () => {
  it("shows the formula, writes it into the selected cell and takes it back", async () => {
    await open();
    await act(() => host.select(at("D9")));
    await page.press("Use selected cell");
    expect(page.field("Into the cell").value).toBe("Example!D9");
    expect(page.text("code")).toEqual([FORMULA]);
    await page.press("Insert");
    await page.shows("Inserted in Example!D9. Undo takes it back");
    expect(await input("D9")).toBe(FORMULA);
    await page.press("Undo");
    await page.shows("Example!D9 is as before the formula");
    expect(await input("D9")).toBe("");
  });

  it("asks before it replaces, and keeps what is there", async () => {
    await open();
    await page.type("Into the cell", "H2");
    await page.press("Insert");
    await page.shows("H2 holds a note. Replace what is there?");
    expect(document.activeElement?.textContent).toBe("Keep");
    await page.press("Keep");
    expect(await input("H2")).toBe("a note");
  });

  it("replaces when told so, and undo brings back what was there", async () => {
    await open();
    await page.type("Into the cell", "H2");
    await page.press("Insert");
    await page.press("Replace");
    await page.shows("Inserted in Example!H2");
    expect(await input("H2")).toBe(FORMULA);
    await page.press("Undo");
    await page.shows("Example!H2 is as before the formula");
    expect(await input("H2")).toBe("a note");
  });

  it("asks before undo overwrites what was typed since", async () => {
    await open();
    await page.type("Into the cell", "D9");
    await page.press("Insert");
    await page.shows("Inserted in Example!D9");
    await act(() => host.type(at("D9"), [[5]]));
    await page.press("Undo");
    await page.shows("Example!D9 was changed after the formula. Put back what was there before it?");
    await page.press("Leave it");
    expect(await input("D9")).toBe(5);
  });

  it("writes settings as references", async () => {
    await open("0");
    await page.type("Into the cell", "D9");
    expect(page.text("code")).toEqual(['=CANFALL.RUNTIME(IF(B2:B7="","x",B2:B7),F2,F3,F4)']);
  });

  it("does not write over what the formula reads", async () => {
    await open();
    await page.type("Into the cell", "B3");
    await page.press("Insert");
    await page.shows("B3 holds what the formula reads; choose another cell");
    expect(await input("B3")).toBe(10);
  });

  it("asks for an address where there is none", async () => {
    await open();
    await page.press("Insert");
    expect(page.beside("Into the cell")).toBe("must be an address such as Example!H2");
    await page.type("Into the cell", "Nowhere!H2");
    await page.press("Insert");
    await page.shows("there is no sheet named Nowhere");
  });

  it("drops what it said of an address once that is changed", async () => {
    await open();
    await page.press("Insert");
    await page.type("Into the cell", "D9");
    expect(page.beside("Into the cell")).toBe("");
    await page.type("Into the cell", "");
    await page.type("Range of the readings", "Nowhere!B2:B7");
    await page.type("Into the cell", "D9");
    await page.press("Insert");
    expect(page.beside("Range of the readings")).toBe("there is no sheet named Nowhere");
    await page.type("Range of the readings", "B2:B7");
    expect(page.beside("Range of the readings")).toBe("");
    await page.press("Insert");
    await page.shows("Inserted in Example!D9");
  });
});

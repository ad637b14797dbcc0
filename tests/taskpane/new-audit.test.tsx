// @vitest-environment jsdom
import { act } from "react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { Pane } from "../../src/taskpane/pane";
import { type MemoryHost, memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";
import { auditHost, cellOf } from "./audit-book";

let page: Awaited<ReturnType<typeof screen>>;
let host: MemoryHost;

async function open(book: MemoryHost): Promise<void> {
  const file = await auditHost().bytes();
  vi.stubGlobal("fetch", async (address: string) =>
    address.endsWith("-audit.xlsx") ? new Response(file as BodyInit) : new Response("", { status: 404 }),
  );
  host = book;
  page = await screen(<Pane host={host} functions={[]} />);
}

/** What leaving a field does. */
async function leave(label: string): Promise<void> {
  await act(async () => page.field(label).dispatchEvent(new FocusEvent("focusout", { bubbles: true })));
}

const value = async (name: string) => (await host.read(cellOf(name)))[0]![0];

afterEach(async () => {
  await page.close();
  vi.unstubAllGlobals();
});

describe("a new audit", () => {
  it("is where a workbook without one opens, and adds its sheets behind those that are there", async () => {
    await open(memoryHost({ Mine: { A1: "my own" } }));
    await page.press("Add the audit sheets to this workbook");
    await page.shows("The audit sheets are behind the sheets that were there. Undo removes them");
    expect(await host.sheets()).toEqual(["Mine", "Block", "Cans", "Results", "Run time"]);
    expect(await host.read({ sheet: "Mine", address: "A1" })).toEqual([["my own"]]);
    expect(await host.selection()).toEqual(cellOf("Site_Name"));
    await page.press("Undo");
    await page.shows("The 4 new sheets are gone; the others are as they were");
    expect(await host.sheets()).toEqual(["Mine"]);
  });

  it("says what did not come", async () => {
    await open(memoryHost({ Mine: {} }));
    host.leavesOut = "Excel on the web adds no charts: they come only with Open as a new workbook";
    await page.press("Add the audit sheets to this workbook");
    await page.shows(
      "The audit sheets are behind the sheets that were there. Excel on the web adds no charts: they come only with Open as a new workbook. Undo removes them",
    );
  });

  it("asks before Undo removes sheets on which something was typed", async () => {
    await open(memoryHost({ Mine: {} }));
    await page.press("Add the audit sheets to this workbook");
    await page.shows("Undo removes them");
    await act(() => host.type(cellOf("Test_Minutes"), [[15]]));
    await page.press("Undo");
    await page.shows("Something was typed on the 4 new sheets since. Remove them all the same?");
    await page.press("Leave it");
    expect(await host.sheets()).toHaveLength(5);
  });

  it("changes nothing where a sheet has a name of the audit, says which and offers a new workbook", async () => {
    await open(memoryHost({ Cans: { A1: "my own" } }));
    await page.press("Add the audit sheets to this workbook");
    await page.shows(
      'There is already a sheet "Cans" in this workbook. Rename or delete it, and start again. Nothing was changed. Open the audit as a new workbook instead?',
    );
    expect(await host.sheets()).toEqual(["Cans"]);
    await page.press("Open as a new workbook");
    await page.shows("The audit is open as a workbook of its own.");
    expect(await host.sheets()).toEqual(["Block", "Cans", "Results", "Run time"]);
  });

  it("leaves the open workbook where the person keeps it", async () => {
    await open(memoryHost({ Mine: {} }));
    host.gives = false;
    await page.press("Open the example");
    await page.shows("The open workbook stays.");
    expect(await host.sheets()).toEqual(["Mine"]);
  });

  it("says so when the file beside the page is missing", async () => {
    await open(memoryHost({ Mine: {} }));
    vi.stubGlobal("fetch", async () => new Response("", { status: 404 }));
    await page.press("Open the example");
    await page.shows("example-audit.xlsx did not load (404)");
  });
});

describe("the first facts", () => {
  it("are written into the cells that have their names, and taken back", async () => {
    await open(auditHost());
    await page.step("Set up");
    await page.type("Site", "Example Nursery");
    await leave("Site");
    await page.type("Bed width", "6.5");
    await leave("Bed width");
    await page.shows("entry in Block!C8");
    expect([await value("Site_Name"), await value("Bed_Width_m")]).toEqual(["Example Nursery", 6.5]);
    await page.press("Undo");
    await page.shows("Block!C8 is as before the entry");
    expect(await value("Bed_Width_m")).toBeNull();
    expect(page.field("Bed width").value).toBe("");
  });

  it("can no longer be taken back once another workbook is open", async () => {
    await open(auditHost());
    await page.step("Set up");
    await page.type("Site", "Example Nursery");
    await leave("Site");
    await page.shows("takes back: entry in Block!C4");
    await page.press("Open the example");
    await page.shows("The example is open");
    await page.shows("nothing to take back");
    expect(await value("Site_Name")).toBeNull();
  });

  it("say what is wrong beside the field, keep what was typed and write nothing", async () => {
    await open(auditHost());
    await page.step("Set up");
    await page.type("Bed width", "6,5 m");
    await leave("Bed width");
    expect(page.beside("Bed width")).toBe('bed width must be a number, got "6,5 m"');
    expect(page.field("Bed width").value).toBe("6,5 m");
    expect(await value("Bed_Width_m")).toBeNull();
    await page.type("Bed width", "0.1");
    await leave("Bed width");
    expect(page.beside("Bed width")).toBe("bed width must be from 0.3 to 500 m, got 0.1");
    await page.type("Bed width", "6,5");
    await leave("Bed width");
    await page.shows("entry in Block!C8");
    expect(await value("Bed_Width_m")).toBe(6.5);
  });

  it("follow what is typed into the workbook", async () => {
    await open(auditHost());
    await page.step("Set up");
    await act(() => host.type(cellOf("Test_Minutes"), [[15]]));
    await page.shows("kept in Cans!C5");
    expect(page.field("Length of the test").value).toBe("15");
  });
});

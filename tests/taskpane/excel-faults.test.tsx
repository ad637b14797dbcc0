// @vitest-environment jsdom
import { act } from "react";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { contractFile } from "../../src/hosts/contract/file";
import { excelHost } from "../../src/hosts/excel/excel";
import { repair } from "../../src/taskpane/help/repair";
import { FirstFacts } from "../../src/taskpane/new-audit/first-facts";
import { NewAudit } from "../../src/taskpane/new-audit/new-audit";
import { SlowNotice } from "../../src/taskpane/slow-notice";
import { UndoBar } from "../../src/taskpane/undo-bar";
import { insert } from "../../src/taskpane/workbook/insert";
import { useUndo } from "../../src/taskpane/workbook/use-undo";
import { FakeExcel } from "../support/fake-excel";
import { rectangle } from "../support/fake-excel-address";
import { found, screen } from "../support/screen";

/** How long the host takes for slow in these tests [ms], in place of 5 s. */
const SLOW_MS = 60;

let excel: FakeExcel;
let page: Awaited<ReturnType<typeof screen>> | null = null;
let host = excelHost(SLOW_MS);

beforeAll(() => {
  excel = new FakeExcel();
});

beforeEach(() => {
  host = excelHost(SLOW_MS);
  const { workbook } = excel;
  for (const sheet of workbook.sheets.slice()) if (sheet.name !== "Sheet1") workbook.remove(sheet);
  workbook.names.clear();
  workbook.add("Block");
  workbook.names.set("Site_Name", "=Block!$B$5");
  workbook.ownUndo.length = 0;
});

afterEach(async () => {
  excel.editing = false;
  excel.latency = 0;
  excel.meanwhile = null;
  excel.office.lacks.clear();
  excel.workbook.refusesWindows = false;
  await page?.close();
  page = null;
  vi.unstubAllGlobals();
});

const block = () => excel.workbook.sheet("Block")!;
const site = () => block().cell(4, 1).value;

function Bar() {
  return <UndoBar host={host} undo={useUndo(host)} />;
}

/** The first facts of an audit, as the pane shows them. */
async function facts() {
  page = await screen(
    <>
      <FirstFacts host={host} keep={() => {}} />
      <SlowNotice host={host} />
    </>,
  );
  await page.shows("First facts");
  return page;
}

async function leave(label: string): Promise<void> {
  await act(async () => page!.field(label).dispatchEvent(new FocusEvent("focusout", { bubbles: true })));
}

const SLOW =
  "Excel has not answered for some seconds. If a cell there is being typed in, press Enter in it. What you typed here stays.";

describe("functions whose list Excel did not load", () => {
  const UNKNOWN =
    "Excel has not loaded Canfall's functions. Save this workbook, open it again and press Open Canfall; if they still show #NAME?, open Canfall's page in a browser and press Check this host";

  it("are told of when one is inserted", async () => {
    const at = { sheet: "Block", address: "D2" };
    expect(await insert(host, at, { text: "=CANFALL.SC.CAN(A1:A4)", rows: 1, columns: 1 }, () => {})).toBe(
      `Inserted in Block!D2. Undo takes it back. It shows #NAME?: ${UNKNOWN}`,
    );
  });

  it("are told of when entering them again does not help", async () => {
    block().set(1, 3, "=CANFALL.SC.CAN(A1:A4)");
    excel.workbook.calculate();
    expect(await repair(host, () => {})).toBe(
      `Entered the functions again in 1 cell: 1 cell still shows #NAME?. ${UNKNOWN}`,
    );
  });
});

describe("a new workbook", () => {
  const file = contractFile("Cans", "Results", "Cans_Readings");
  beforeEach(() => {
    vi.stubGlobal("fetch", async () => new Response(file as BodyInit));
  });
  const open = async () => {
    page = await screen(<NewAudit {...({ host, keep: () => {} } as unknown as Parameters<typeof NewAudit>[0])} />);
    return page;
  };

  it("may open behind: it is said where to look", async () => {
    const page = await open();
    await page.press("Open as a new workbook");
    await page.shows(
      "The audit was handed to Excel to open as a workbook of its own: look behind this window, or in your cloud folder, and press Open Canfall there.",
    );
  });

  it("that Excel refuses is an ordinary link as well", async () => {
    excel.workbook.refusesWindows = true;
    const page = await open();
    await page.press("Open as a new workbook");
    await page.shows("You cannot perform the requested operation.");
    const links = [...page.place.querySelectorAll("a")].map((link) => [link.getAttribute("href"), link.download]);
    expect(links).toEqual([
      ["block-audit.xlsx", "Block audit.xlsx"],
      ["example-audit.xlsx", "Example audit.xlsx"],
    ]);
  });

  it("whose sheets a protected structure refuses changes nothing and offers the other way", async () => {
    excel.workbook.structureProtected = true;
    const page = await open();
    await page.press("Add the audit sheets to this workbook");
    await page.shows(
      "its structure is protected (Review, Protect Workbook). Open them as a workbook of their own instead. Nothing was changed. Open the audit as a new workbook instead?",
    );
    excel.workbook.structureProtected = false;
    expect(await host.sheets()).toEqual(["Sheet1", "Block"]);
  });
});

describe("what was typed in the pane", () => {
  it("stays in its field where the sheet has a password", async () => {
    block().protection = { options: {}, password: "secret" };
    const page = await facts();
    await page.type("Site", "Example Nursery");
    await leave("Site");
    await page.shows('The sheet "Block" has a password. Take its protection off, and start again');
    expect(page.field("Site").value).toBe("Example Nursery");
    expect(site()).toBe(null);
  });

  it("waits while a cell is being typed in, and is written once that ends", async () => {
    const page = await facts();
    excel.editing = true;
    await page.type("Site", "Example Nursery");
    await leave("Site");
    await page.shows(SLOW);
    expect(page.field("Site").value).toBe("Example Nursery");
    expect(site()).toBe(null);
    excel.editing = false;
    await found(() => site() === "Example Nursery");
    await found(() => !page.place.textContent?.includes(SLOW));
    expect(page.field("Site").value).toBe("Example Nursery");
  });

  it("stays where an older Excel refuses while a cell is being typed in", async () => {
    excel.office.lacks.add("DelayForCellEdit");
    const page = await facts();
    excel.editing = true;
    await page.type("Site", "Example Nursery");
    await leave("Site");
    await page.shows("A cell of the workbook is being typed in: press Enter there, then do this again");
    expect(page.field("Site").value).toBe("Example Nursery");
  });

  it("stays while a request is slow, and so does what is typed meanwhile", async () => {
    const page = await facts();
    excel.latency = 2 * SLOW_MS;
    await page.type("Site", "Example");
    await leave("Site");
    await page.shows(SLOW);
    expect(page.field("Site").value).toBe("Example");
    await page.type("Site", "Example Nursery");
    await found(() => site() === "Example");
    excel.latency = 0;
    await found(() => excel.unanswered === 0);
    expect(page.field("Site").value).toBe("Example Nursery");
    await leave("Site");
    await found(() => site() === "Example Nursery");
  });
});

describe("more than 5 MB at once", () => {
  it("that Excel would hand over is refused in words", async () => {
    for (let row = 0; row < 60; row += 1) block().set(row, 0, "x".repeat(100_000));
    await expect(host.read({ sheet: "Block", address: "A1:A60" })).rejects.toThrow(
      "Excel hands over at most 5 MB at once: select fewer cells, the readings only",
    );
  });

  it("that Excel would take is refused in words", async () => {
    await expect(host.openBook(new Uint8Array(4_000_000), "audit.xlsx")).rejects.toThrow(
      "Excel takes at most 5 MB at once, and this is more",
    );
  });
});

describe("a co-author", () => {
  const reads = ({ Actions }: (typeof excel.requests)[number]) => JSON.stringify(Actions).includes('"values"');

  it("who takes away a sheet between two reads leaves the pane with what is there", async () => {
    excel.workbook.selection = { sheet: block(), area: rectangle("B5") };
    excel.meanwhile = (request) => {
      if (!reads(request)) return false;
      excel.workbook.remove(block());
      return true;
    };
    const snapshot = await host.snapshot({ names: ["Site_Name"] });
    expect(snapshot.seen.sheets).toEqual(["Sheet1"]);
    expect(snapshot.named("Site_Name")).toBe(null);
  });

  it("who types between the reading of a cell and its writing is asked about before Undo", async () => {
    const kept: Parameters<Parameters<typeof insert>[3]>[0][] = [];
    await insert(host, { sheet: "Block", address: "D2" }, { text: "=1+1", rows: 1, columns: 1 }, (one) =>
      kept.push(one),
    );
    block().set(1, 3, "theirs");
    expect(await kept[0]!.untouched()).toBe(false);
  });
});

describe("Excel's own Undo", () => {
  const ownUndo = () => excel.workbook.ownUndo.length;
  const write = (address: string) => host.write({ sheet: "Block", address }, [["x"]]);

  it("is named beside the pane's, with the acts that empty it", async () => {
    page = await screen(<Bar />);
    await page.shows(
      "What empties Excel's own Undo" +
        "Adding and removing sheets, writing or placing a picture on a protected sheet beside its open cells, and the self-test. This Undo still takes back what the pane did.",
    );
  });

  it("stays after an entry, also in an open cell of a protected sheet", async () => {
    await write("A1");
    block().unlocked.add("1,0");
    block().protection = { options: {} };
    await write("A2");
    expect(ownUndo()).toBe(2);
  });

  it("is emptied by the acts that are named: a locked cell, sheets that come and go", async () => {
    const emptied = async (work: () => Promise<unknown>) => {
      block().protection = null;
      await write("A1");
      expect(ownUndo()).toBeGreaterThan(0);
      await work();
      return excel.workbook.ownUndo.filter((one) => one === "Block!A1").length === 0;
    };
    const locked = async () => {
      block().protection = { options: {} };
      await host.write({ sheet: "Block", address: "C1" }, [[1]]);
    };
    expect(await emptied(locked)).toBe(true);
    expect(await emptied(() => host.insertSheets(contractFile("Cans", "Results", "Cans_Readings")))).toBe(true);
    expect(await emptied(() => host.removeSheet("Cans"))).toBe(true);
  });
});

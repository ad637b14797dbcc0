// @vitest-environment jsdom
import { File as NodeFile } from "node:buffer";
import { readFileSync } from "node:fs";
import { act } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { Snapshot } from "../../src/hosts/snapshot";
import { Pane } from "../../src/taskpane/pane";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { buildWorkbook } from "../../src/workbook/form/build";
import { type MemoryHost, memoryHost } from "../support/memory-host";
import { found, screen } from "../support/screen";

let page: Awaited<ReturnType<typeof screen>>;
let host: MemoryHost;

const EXAMPLE = new Uint8Array(readFileSync("templates/example-audit.xlsx"));

async function open(file: Uint8Array = EXAMPLE): Promise<void> {
  const block = (address: string) => ({ sheet: "Block", address });
  host = memoryHost(
    { Block: { C4: "Example Nursery", C5: "block 7", C6: 46000 } },
    { Site_Name: block("C4"), Block_Name: block("C5"), Test_Date: block("C6") },
  );
  host.bytes = async () => file;
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step("Share");
}

/** What choosing files in the browser's own dialog does. */
async function choose(...files: File[]): Promise<void> {
  const input = await found(() => page.place.querySelector('input[aria-label="Copies to check"]'));
  Object.defineProperty(input, "files", { value: files, configurable: true });
  await act(async () => input.dispatchEvent(new Event("change", { bubbles: true })));
}

/** The page's own File cannot be read in jsdom. */
const asFile = (bytes: Uint8Array | string, name: string) =>
  new NodeFile([bytes as Uint8Array<ArrayBuffer> | string], name) as unknown as File;

afterEach(() => page.close());

describe("sharing", () => {
  it("hands over a copy named by site, block and day, which the check takes for one", async () => {
    await open();
    await page.press("Make a share copy");
    const name = "Example Nursery block 7 2025-12-09 share copy.xlsx";
    await page.shows(`${name} is kept in memory.`);
    expect(host.delivered.map((one) => one.name)).toEqual([name]);
    await choose(asFile(host.delivered[0]!.file, name));
    await page.shows("share copy of ");
    await page.shows("not that the readings are true");
    expect(page.text("tbody tr")).toContainEqual(
      expect.stringMatching(/^Mean application rate \(MAR\)stated(\d+\.\d{4,5}) mm\/hrecomputed\1 mm\/h✓ agrees$/),
    );
    expect(page.text("h3")).toContain(name);
    expect(document.activeElement?.textContent).toBe(name);
    expect(page.text("details:not([open]) > summary")).toContainEqual(
      expect.stringMatching(/^Figures that agree: \d+$/),
    );
  });

  it("asks before it hands over a copy whose figures do not agree, and shows which", async () => {
    // as built the workbook was never calculated, so its cells state nothing
    await open(await buildWorkbook(AUDIT_SHEETS, EXAMPLE_ENTRIES));
    await page.press("Make a share copy");
    await page.shows("figures do not agree with what the readings give, ");
    expect(page.text("tbody tr")).toContain(
      "Cans countedCans!B11statedblankshown as nothingrecomputed30 cans✗ does not agree",
    );
    expect(host.delivered).toEqual([]);
    const list = page.place.querySelector("details:has(h3)")!;
    expect(list.hasAttribute("open")).toBe(true);
    await page.press("Do not hand it out");
    expect(list.hasAttribute("open")).toBe(false);
    expect(host.delivered).toEqual([]);
    await page.press("Make a share copy");
    await page.press("Hand it out all the same");
    await page.shows("share copy.xlsx is kept in memory.");
  });

  it("begins each check without what was said of the last one's report", async () => {
    await open();
    await choose(asFile(EXAMPLE, "first.xlsx"));
    await page.press("Save as .xlsx");
    await page.shows("report on first, agrees.xlsx is kept in memory.");
    await choose(asFile(EXAMPLE, "second.xlsx"));
    await found(() => page.text("h3").includes("second.xlsx"));
    expect(page.place.textContent).not.toContain("is kept in memory.");
  });

  it("says that the open workbook is another one only where its name is known to be another", async () => {
    await open();
    const words = "The open workbook is another one";
    await choose(asFile(EXAMPLE, "sent.xlsx"));
    await page.shows("Figures that agree");
    expect(page.place.textContent).not.toContain(words); // this host does not tell the name
    const { snapshot } = host;
    const called = async (file: string) => {
      host.snapshot = async (wanted) => new Snapshot({ ...(await snapshot(wanted)).seen, file });
      await act(async () => host.type({ sheet: "Block", address: "C4" }, [[file]]));
    };
    await called("mine.xlsx");
    await page.shows(words);
    await called("sent.xlsx");
    await found(() => !page.place.textContent!.includes(words));
  });

  it("says why a file cannot be checked", async () => {
    await open();
    await choose(asFile("no workbook at all", "notes.xlsx"));
    await page.shows('the file must be an .xlsx workbook, got "a file of another kind"');
    await choose(asFile("x", "notes.txt"));
    await page.shows("There is no .xlsx file among what was chosen");
  });

  it("makes a register of several files, one a line, and saves it", async () => {
    await open();
    await choose(asFile(await host.bytes(), "b.xlsx"), asFile("nothing", "a.xlsx"));
    await page.shows("2 files, 1 to look at");
    expect(document.activeElement?.textContent).toBe("Register");
    const rows = page.text("tbody tr");
    expect(rows[0]).toContain("a.xlsx");
    expect(rows[0]).toContain("? not read");
    expect(rows[1]).toContain("Example Nursery (invented) · block 7 · 2026-11-10");
    await page.press("Save as .csv");
    await page.shows("register of audits.csv is kept in memory.");
    const csv = new TextDecoder().decode(host.delivered[0]!.file);
    expect(csv.split("\r\n")[1]).toContain("a.xlsx,,,,,,,,,,not read,");
    await page.press("b.xlsx");
    // an audit as it was saved is no share copy, which accuses nobody; what agrees is counted once
    await page.shows("This is an audit, not a share copy: it has no code and no sheet Evidence");
    const said = /(\d+) agree; (\d+) cannot be given/.exec(page.place.textContent!)!;
    expect(page.place.textContent).toContain(`Figures that agree: ${said[1]}`);
    expect(page.place.textContent).toContain(`Figures that cannot be given: ${said[2]}`);
    expect(page.place.textContent).not.toContain("Changed: ");
  });
});

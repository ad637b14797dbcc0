// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from "vitest";
import { copyPicture, copyTable, tableForms } from "../../src/taskpane/parts/files/clipboard";

const ROWS = [
  ["Block", "Minutes"],
  ["A < B & C", 12.5],
  ["=1+1", null],
  ["two\nlines\there", true],
];

/** jsdom knows no clipboard. */
function clipboard(write: (items: { forms: Record<string, unknown> }[]) => Promise<void>): void {
  vi.stubGlobal(
    "ClipboardItem",
    class {
      constructor(readonly forms: Record<string, unknown>) {}
    },
  );
  Object.defineProperty(navigator, "clipboard", { configurable: true, value: { write } });
}

afterEach(() => vi.unstubAllGlobals());

describe("a table to copy", () => {
  it("is text with tabs, a cell that looks like a formula as text", () => {
    expect(tableForms(ROWS).text.split("\r\n")).toEqual([
      "Block\tMinutes",
      "A < B & C\t12.5",
      "'=1+1\t",
      "two lines here\ttrue",
    ]);
  });

  it("is a table of HTML that a page shows as it is", () => {
    const page = new DOMParser().parseFromString(tableForms(ROWS).html, "text/html");
    expect([...page.querySelectorAll("th")].map((cell) => cell.textContent)).toEqual(["Block", "Minutes"]);
    const lines = [...page.querySelectorAll("tbody tr")];
    expect(lines.map((line) => [...line.children].map((cell) => cell.textContent))).toEqual([
      ["A < B & C", "12.5"],
      ["'=1+1", ""],
      ["two lines here", "true"],
    ]);
  });

  it("goes to the clipboard in both forms", async () => {
    const items: Record<string, unknown>[] = [];
    clipboard(async ([item]) => void items.push(item!.forms));
    await copyTable(ROWS);
    expect(items.map((item) => Object.keys(item))).toEqual([["text/plain", "text/html"]]);
  });

  it("goes the older way where the pane may not write to the clipboard", async () => {
    clipboard(() => Promise.reject(new Error("not allowed")));
    const given: string[][] = [];
    document.execCommand = () => {
      const event = new Event("copy", { cancelable: true });
      const clipboardData = { setData: (type: string, text: string) => void given.push([type, text]) };
      document.dispatchEvent(Object.assign(event, { clipboardData }));
      return event.defaultPrevented;
    };
    await copyTable(ROWS);
    const { text, html } = tableForms(ROWS);
    expect(given).toEqual([
      ["text/plain", text],
      ["text/html", html],
    ]);
  });

  it("that may not be copied at all names the other way", async () => {
    clipboard(() => Promise.reject(new Error("not allowed")));
    document.execCommand = () => false;
    await expect(copyTable(ROWS)).rejects.toThrow("This pane may not copy. Put the table on a new sheet instead");
  });
});

describe("a picture to copy", () => {
  it("is promised at once, and named another way where that is refused", async () => {
    let forms: Record<string, unknown> = {};
    clipboard(async ([item]) => {
      forms = item!.forms;
    });
    await copyPicture(Promise.resolve(new Uint8Array([1])));
    expect(forms["image/png"]).toBeInstanceOf(Promise);
    clipboard(() => Promise.reject(new Error("not allowed")));
    await expect(copyPicture(Promise.resolve(new Uint8Array([1])))).rejects.toThrow(
      "This pane may not copy a picture. Place it at the selected cell, and copy it there",
    );
  });
});

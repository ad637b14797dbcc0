// @vitest-environment jsdom
import { lazy, Suspense } from "react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { MissingPart } from "../../src/taskpane/missing-part";
import { words } from "../../src/taskpane/parts/task/words";
import { screen } from "../support/screen";

/** As webpack names what it throws where a file is gone. */
const gone = () =>
  Object.assign(new Error("Loading chunk 7 failed. (error: https://host.example/7.1a2b.js)"), {
    name: "ChunkLoadError",
  });
const reload = vi.fn();
let page: Awaited<ReturnType<typeof screen>>;

async function open(reason: Error, typed: boolean) {
  const Part = lazy(() => Promise.reject<{ default: () => null }>(reason));
  page = await screen(
    <MissingPart typed={() => typed} reload={reload}>
      <Suspense>
        <Part />
      </Suspense>
    </MissingPart>,
  );
}

beforeEach(() => {
  vi.spyOn(console, "error").mockImplementation(() => {});
  sessionStorage.clear();
  reload.mockClear();
});
afterEach(async () => {
  await page.close();
  vi.restoreAllMocks();
});

describe("a step whose file is gone", () => {
  it("loads the page again once where nothing was typed, and then asks", async () => {
    await open(gone(), false);
    await vi.waitFor(() => expect(reload).toHaveBeenCalledTimes(1));
    await page.close();
    await open(gone(), false);
    await page.shows("This step did not load");
    expect(reload).toHaveBeenCalledTimes(1);
    await page.press("Load Canfall again");
    expect(reload).toHaveBeenCalledTimes(2);
  });

  it("asks first where something was typed, and says what would be lost", async () => {
    await open(gone(), true);
    await page.shows("Text in fields of the pane that is not in the workbook yet is lost then.");
    expect(reload).toHaveBeenCalledTimes(0);
  });

  it("is told in words by other tasks", () => {
    expect(words(gone())).toBe(
      "A part of Canfall did not load. Look at the connection; where a newer version was put up, close the pane and open it again",
    );
  });
});

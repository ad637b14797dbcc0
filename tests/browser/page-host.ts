import type { Page } from "playwright-core";
import { type Host, PLAIN_SEPARATORS } from "../../src/hosts/host";
import { Snapshot, type Wanted } from "../../src/hosts/snapshot";

type Call = Exclude<keyof Host, "label" | "watch" | "snapshot" | "slow" | "openPage" | "separators">;

/** A snapshot of the workbook in a page. */
export const pageSnapshot = async (page: Page, wanted: Wanted): Promise<Snapshot> =>
  new Snapshot(await page.evaluate(async (asked) => (await window.desk.host.snapshot(asked)).seen, wanted));

/** The page's host, called from the tests: what goes in and out crosses over as plain data. */
export async function pageHost(page: Page): Promise<Host> {
  const listeners = new Map<number, () => void>();
  await page.exposeFunction("toldTheTest", (id: number) => listeners.get(id)?.());

  const call =
    (method: Call) =>
    (...given: unknown[]) =>
      page.evaluate(
        async (asked) => {
          const host = window.desk.host as unknown as Record<string, (...given: unknown[]) => Promise<unknown>>;
          return (await host[asked.method]!(...asked.given)) as never;
        },
        { method, given },
      );

  async function watch(changed: () => void): Promise<() => Promise<void>> {
    const id = listeners.size;
    listeners.set(id, changed);
    const handle = await page.evaluateHandle((id) => {
      const { toldTheTest } = window as unknown as { toldTheTest(id: number): void };
      return window.desk.host.watch(() => toldTheTest(id));
    }, id);
    return () => handle.evaluate((stop) => stop());
  }

  return {
    label: "desk",
    platform: "the page of the desk",
    opened: "",
    saves: true,
    openPage: () => {},
    slow: () => () => {},
    separators: async () => PLAIN_SEPARATORS,
    snapshot: (wanted) => pageSnapshot(page, wanted),
    selection: call("selection"),
    select: call("select"),
    watch,
    read: call("read"),
    inputs: call("inputs"),
    write: call("write"),
    writeTogether: call("writeTogether"),
    writeKept: call("writeKept"),
    named: call("named"),
    sheets: call("sheets"),
    used: call("used"),
    addSheet: call("addSheet"),
    removeSheet: call("removeSheet"),
    settled: call("settled"),
    bytes: call("bytes"),
    insertSheets: call("insertSheets"),
    openBook: call("openBook"),
    deliver: call("deliver"),
    placePicture: call("placePicture"),
    removePicture: call("removePicture"),
    pictures: call("pictures"),
  };
}

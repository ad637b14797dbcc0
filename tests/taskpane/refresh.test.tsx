// @vitest-environment jsdom
import { describe, expect, it, vi } from "vitest";
import type { Wanted } from "../../src/hosts/snapshot";
import { Pane } from "../../src/taskpane/pane";
import { refreshOf } from "../../src/taskpane/workbook/refresh";
import { memoryHost } from "../support/memory-host";
import { found, screen } from "../support/screen";

const at = (address: string) => ({ sheet: "Bed", address });
const readings = () =>
  memoryHost({ Bed: { A1: 10, A2: 12, A3: 8, A4: 10 } }, { Test_Minutes: at("B1"), Cans_Readings: at("A1:A4") });

describe("a refresh", () => {
  it("is one call, shared by the answer, the first step, Undo and every step that is in sight", async () => {
    const host = readings();
    await host.select(at("A1:A4"));
    const page = await screen(<Pane host={host} functions={[]} />);
    await page.shows("Driest can");
    const calls = vi.spyOn(host, "snapshot");
    await host.type(at("A1"), [[6]]);
    await page.shows("Driest can 6.00 mL in A1");
    expect(calls).toHaveBeenCalledTimes(1);
    await page.close();
  });

  it("asks for all that its readers want, each place once, and for nothing of those who left", async () => {
    const host = readings();
    const asked: Wanted[] = [];
    const snapshot = host.snapshot;
    host.snapshot = async (wanted) => {
      asked.push(wanted);
      return snapshot(wanted);
    };
    const refresh = refreshOf(host);
    const shown: unknown[] = [];
    const reader = (wants: Wanted) => ({
      wants: () => wants,
      show: (seen: Awaited<ReturnType<typeof snapshot>>) => void shown.push(seen.named("Test_Minutes")?.area),
      fail: (reason: unknown) => void shown.push(String(reason)),
    });
    const leave = refresh.follow(reader({ names: ["Test_Minutes"], areas: [at("A1")] }));
    const leaveToo = refresh.follow(reader({ names: ["test_minutes"], inputs: [at("A1")] }));
    await found(() => shown.length === 2);
    expect(asked).toEqual([{ names: ["test_minutes"], areas: [at("A1")], inputs: [at("A1")] }]);
    leave();
    await host.type(at("A1"), [[11]]);
    await found(() => shown.length === 3);
    expect(asked.at(-1)).toEqual({ names: ["test_minutes"], areas: [at("A1")], inputs: [at("A1")] });
    leaveToo();
    await host.type(at("A1"), [[12]]);
    await Promise.resolve();
    expect([asked.length, shown]).toEqual([2, Array(3).fill(at("B1"))]);
  });

  it("goes on for the others when one reader cannot read what it finds", async () => {
    const host = readings();
    const told: string[] = [];
    const stop = [
      refreshOf(host).follow({
        wants: () => ({}),
        show: (snapshot) => void snapshot.named("Nobody_Asked"),
        fail: (reason) => void told.push(String(reason)),
      }),
      refreshOf(host).follow({ wants: () => ({}), show: () => void told.push("read"), fail: () => {} }),
    ];
    await found(() => told.length === 2);
    expect(told).toEqual(["Error: Nobody_Asked was not asked for", "read"]);
    for (const one of stop) one();
  });
});

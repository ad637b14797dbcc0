import { describe, expect, it } from "vitest";
import { Board } from "../../../src/core/program/board";
import { heaviestClique } from "../../../src/core/program/clique";
import { clock } from "../../../src/core/program/clock";
import { dualFeasible } from "../../../src/core/program/dual-feasible";
import { jobs, thousandths } from "../../../src/core/program/jobs";
import { orderSearch } from "../../../src/core/program/order-search";
import { randomBelow } from "../../../src/core/program/random";
import { minuteAfter, openMinutes, spans } from "../../../src/core/program/spans";
import { Supply } from "../../../src/core/program/supply";
import { taskOf } from "../../../src/core/program/task";
import fc from "../../support/properties";
import { smallProgram, valve } from "./small";

describe("dualFeasible", () => {
  it("never gives flows that fit the pump together more than 1", () => {
    const flows = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(flows, fc.integer({ min: 60, max: 200 }), (all, pump) => {
        const fitting = all.filter((_, i) => all.slice(0, i + 1).reduce((sum, flow) => sum + flow, 0) <= pump);
        for (const weight of dualFeasible(all, pump)) {
          expect(fitting.reduce((sum, flow) => sum + weight(flow), 0)).toBeLessThanOrEqual(1 + 1e-9);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("sees that flows over half the pump cannot share it", () => {
    // three flows of 51 under a pump of 100 weigh 1.53 by themselves, and 3 by the best of the functions
    const most = Math.max(...dualFeasible([51, 51, 51], 100).map((weight) => 3 * weight(51)));
    expect(most).toBe(3);
  });
});

describe("heaviestClique", () => {
  it("is the heaviest of all sets whose members exclude each other", () => {
    const weights = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(weights, fc.integer(), (all, bits) => {
        const exclude = (a: number, b: number) => ((bits >> ((a * b + a + b) % 31)) & 1) === 1;
        let most = 0;
        for (let set = 0; set < 2 ** all.length; set += 1) {
          const members = all.map((_, i) => i).filter((i) => set & (1 << i));
          if (members.some((a) => members.some((b) => a < b && !exclude(a, b)))) continue;
          most = Math.max(
            most,
            members.reduce((sum, i) => sum + all[i]!, 0),
          );
        }
        expect(heaviestClique(all, exclude)).toBe(most);
      }),
    );
  });
});

describe("spans", () => {
  it("go on over midnight and stay in their order", () => {
    expect(
      spans([
        { start: 1200, end: 1380 },
        { start: 120, end: 480 },
      ]),
    ).toEqual([
      { start: 1200, end: 1380 },
      { start: 1560, end: 1920 },
    ]);
    expect(
      spans([
        { start: 1320, end: 360 },
        { start: 600, end: 660 },
      ]),
    ).toEqual([
      { start: 1320, end: 1800 },
      { start: 2040, end: 2100 },
    ]);
    expect(spans([{ start: 0, end: 1440 }])).toEqual([{ start: 0, end: 1440 }]);
  });

  it("hold so many open minutes, and minuteAfter is where they end", () => {
    const line = [
      { start: 10, end: 20 },
      { start: 30, end: 40 },
    ];
    expect([5, 15, 25, 35, 50].map((minute) => openMinutes(line, minute))).toEqual([0, 5, 10, 15, 30]);
    expect([0, 5, 10, 15, 30].map((work) => minuteAfter(line, work, 0))).toEqual([10, 15, 20, 35, 50]);
    // two minutes more in each window: 12 in the first, the 13th is done when the second begins
    expect([12, 13, 15].map((work) => minuteAfter(line, work, 2))).toEqual([20, 30, 31]);
  });
});

describe("jobs", () => {
  it("are whole minutes, and hold the pump through the change-over", () => {
    const program = { blocks: [valve("A", 10.0004, 9.5, 2, 20)], pump: 10, windows: [], changeOver: 45, step: 0.5 };
    // 9.5 min run takes 10 whole minutes, with 0.75 min 11, with 20 min rest 30
    expect(jobs(program)).toEqual([
      {
        name: "A",
        number: 2,
        minutes: 9.5,
        run: 10,
        hold: 11,
        lag: 30,
        flow: 10_000,
        litres: (10.0004 * 19) / 60,
        apart: [],
      },
    ]);
    expect(thousandths(1.5)).toBe(1500);
  });

  it("know each other where a pair is kept apart, once", () => {
    const blocks = [valve("A", 1, 5), { ...valve("B", 1, 5), depth: 0 }, valve("C", 1, 5)];
    const pairs: [string, string][] = [
      ["A", "C"],
      ["C", "A"],
      ["B", "A"],
    ];
    expect(jobs({ blocks, pump: 9, windows: [], apart: pairs }).map(({ apart }) => apart)).toEqual([[1], [0]]);
  });
});

describe("the board", () => {
  it("places a pulse at the earliest minute, again after it was cleared", () => {
    const { task } = taskOf({
      blocks: [valve("A", 3, 4), valve("B", 3, 5)],
      pump: 5,
      windows: [{ start: 60, end: 90 }],
    });
    const board = new Board(task);
    expect([board.place(1), board.place(0)]).toEqual([65, 69]);
    board.clear();
    expect([board.place(0), board.place(1)]).toEqual([64, 69]);
    expect(board.starts).toEqual([[60], [64]]);
  });
});

describe("the supply", () => {
  it("lets a pulse wait until its water is there", () => {
    const [job] = jobs({ blocks: [valve("A", 60, 10)], pump: 60, windows: [] });
    // 10 L are needed, 4 L are there, 0.5 L a minute come: in the k-th minute k + 1 L are used of 4 + 0.5 (s + k)
    const supply = new Supply({ volume: 4, refill: 30 }, 100);
    // 10 <= 4 + 0.5 (s + 9) gives s >= 3
    expect(supply.earliest(job!, 0)).toBe(3);
    supply.take(job!, 3);
    // 20 <= 4 + 0.5 (s + 9) gives s >= 23
    expect(supply.earliest(job!, 0)).toBe(23);
  });
});

describe("search", () => {
  it("stops at the bound", () => {
    const { task } = taskOf(smallProgram(1));
    const found = orderSearch(task, 1000, 1_000_000).next();
    const pulses = task.jobs.reduce((sum, { number }) => sum + number, 0);
    expect(found.done).toBe(true);
    expect(found.value.placed).toBe(pulses);
  });
});

describe("randomBelow", () => {
  it("repeats, and reaches every place about equally often", () => {
    const counts = [0, 0, 0, 0, 0];
    const [one, same] = [randomBelow(7), randomBelow(7)];
    for (let i = 0; i < 5000; i += 1) {
      const place = one(5);
      expect(same(5)).toBe(place);
      counts[place]! += 1;
    }
    // 1000 each, standard deviation 28
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});

describe("clock", () => {
  it("is the time of day", () => {
    expect([0, 61, 1439, 1440, 1505.5].map(clock)).toEqual(["00:00", "01:01", "23:59", "00:00", "01:05"]);
  });
});

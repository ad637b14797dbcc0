import type { Highs } from "highs";
import type { Program } from "../../../src/core/program/program";
import { type Span, type Valve, valves } from "./every-order";

interface Pulse {
  valve: number;
  run: number;
  hold: number;
  starts: number[];
  at: (minute: number) => string;
}

/**
 * The earliest finish of a program by a time-indexed model, solved by HiGHS: one binary variable a pulse and minute of
 * start; windows are the minutes that exist; rests are rows between pulses; pump and pairs are a row a minute.
 *
 * @param spans Windows on running minutes
 * @param latest A minute by which some schedule ends
 */
export function exactFinish(highs: Highs, program: Program, spans: Span[], latest: number): number {
  const all = valves(program);
  const first = spans[0]!.start;
  const pulses = all.map((valve, v) => Array.from({ length: valve.number }, (_, k) => pulse(valve, v, k)));
  const flat = pulses.flat();
  const rows = flat.map(({ starts, at }) => `${starts.map(at).join(" + ")} = 1`);
  for (const [v, own] of pulses.entries()) {
    for (const [k, next] of own.entries()) {
      if (k > 0) rows.push(`${timed(next, "+")} ${timed(own[k - 1]!, "-")} >= ${all[v]!.lag}`);
    }
  }
  for (const each of flat) rows.push(`C ${timed(each, "-", each.run)} >= 0`);
  for (let minute = first; minute < latest; minute += 1) {
    const on = flat.flatMap(({ valve, hold, starts, at }) =>
      starts.filter((t) => t <= minute && minute < t + hold).map((t) => ({ valve, name: at(t) })),
    );
    if (on.length === 0) continue;
    rows.push(`${on.map(({ valve, name }) => `${all[valve]!.flow} ${name}`).join(" + ")} <= ${1000 * program.pump}`);
    for (const [a, { apart }] of all.entries()) {
      for (let b = a + 1; b < all.length; b += 1) {
        const pair = on.filter(({ valve }) => valve === a || valve === b).map(({ name }) => name);
        if (apart[b] && pair.length > 0) rows.push(`${pair.join(" + ")} <= 1`);
      }
    }
  }
  const names = flat.flatMap(({ starts, at }) => starts.map(at));
  const model = `Minimize\n C\nSubject To\n ${rows.join("\n ")}\nBinary\n ${names.join(" ")}\nEnd\n`;
  const { Status: status, ObjectiveValue: finish } = highs.solve(model, { output_flag: false });
  if (status !== "Optimal") throw new Error(`HiGHS ended with ${status}`);
  return Math.round(finish) + first;

  function pulse({ run, hold, lag, number }: Valve, valve: number, k: number): Pulse {
    const starts: number[] = [];
    for (let t = first + k * lag; t + run + (number - 1 - k) * lag <= latest; t += 1) {
      if (spans.some(({ start, end }) => t >= start && t + run <= end)) starts.push(t);
    }
    return { valve, run, hold, starts, at: (minute) => `x_${valve}_${k}_${minute}` };
  }

  function timed({ starts, at }: Pulse, sign: string, later = 0): string {
    return starts.map((t) => `${sign} ${t - first + later} ${at(t)}`).join(" ");
  }
}

import { fitNight, type Night } from "../../src/core/program/fit-night";
import type { Program } from "../../src/core/program/program";
import { type Span, spans } from "../../src/core/program/spans";
import { verifyNight } from "../../src/core/program/verify-night";
import { endsBy } from "../core/program/every-order";
import { nursery } from "./nurseries";

const NURSERIES = 300;
const FEW_BLOCKS = 8;
const MANY_STATES = 2_000_000;
const MOST_GAP = 0.1;

interface Fitted {
  index: number;
  program: Program;
  night: Night;
  milliseconds: number;
}

function fitted(index: number): Fitted {
  const program = nursery(index);
  const started = performance.now();
  const night = fitNight(program);
  return { index, program, night, milliseconds: performance.now() - started };
}

/** The windows, the last one long enough for the schedule. */
function longEnough({ program, night }: Fitted): Span[] {
  const line = spans(program.windows);
  const last = line.at(-1);
  if (last) last.end = Math.max(last.end, night.finish);
  return line;
}

/** Broken rules; what ran on after the last window, where it does not fit, must be all that is outside. */
function broken({ program, night }: Fitted): string[] {
  const end = spans(program.windows).at(-1)?.end ?? 0;
  const late = night.schedule.filter(({ start, minutes }) => start + minutes > end).length;
  const lines = verifyNight(program, night.schedule);
  const outside = lines.filter((line) => line.endsWith("is not whole in a window")).length;
  return outside === late ? lines.filter((line) => !line.endsWith("is not whole in a window")) : lines;
}

/** Minutes by which the schedule finishes later than the earliest that there is. */
function overOptimum(each: Fitted): number {
  const line = longEnough(each);
  let { finish } = each.night;
  for (;;) {
    if (finish === each.night.bound) return each.night.finish - finish;
    const earlier = endsBy(each.program, line, finish - 1, MANY_STATES);
    if (earlier === "unknown") throw new Error(`nursery ${each.index} has too many states`);
    if (earlier === "none") return each.night.finish - finish;
    finish = earlier;
  }
}

function at(values: number[], share: number): number {
  return (
    [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? Number.NaN
  );
}

function row(title: string, some: Fitted[]): string {
  const gaps = some.map(({ night }) => 100 * night.gapShare);
  const times = some.map(({ milliseconds }) => milliseconds);
  const shown = [at(gaps, 0.5), at(gaps, 0.9), Math.max(...gaps)].map((gap) => gap.toFixed(1));
  const optimal = some.filter(({ night }) => night.gap === 0).length;
  return `| ${[title, some.length, optimal, ...shown, at(times, 0.5).toFixed(0), Math.max(...times).toFixed(0)].join(" | ")} |`;
}

function nightBench(): void {
  const all = Array.from({ length: NURSERIES }, (_, index) => fitted(index));
  const rules = all.flatMap(broken);
  console.log(`${NURSERIES} nurseries, every one verified: ${rules.length} broken rules`);
  for (const line of rules.slice(0, 10)) console.log(line);
  const small = all.filter(({ program }) => program.blocks.length <= FEW_BLOCKS);
  const large = all.filter(({ program }) => program.blocks.length > FEW_BLOCKS);
  console.log("\n| nurseries | number | gap 0 | median gap % | 90 % have less | largest | median ms | longest ms |");
  console.log("| --- | --- | --- | --- | --- | --- | --- | --- |");
  console.log(row("all", all));
  console.log(row(`up to ${FEW_BLOCKS} blocks`, small));
  console.log(row("more", large));
  const fit = all.filter(({ night }) => night.fits).length;
  const proven = all.filter(({ night }) => !night.fits && night.proven).length;
  console.log(`\n${fit} fit; of the ${NURSERIES - fit} others ${proven} are proven not to`);
  const over = small.map(overOptimum);
  const equal = over.filter((minutes) => minutes === 0).length;
  console.log(`of ${small.length} of up to ${FEW_BLOCKS} blocks ${equal} finish at the exact earliest`);
  console.log(`the largest miss is ${Math.max(...over)} min`);
  if (
    broken.length > 0 ||
    !(
      at(
        large.map(({ night }) => night.gapShare),
        0.5,
      ) <= MOST_GAP
    )
  )
    process.exitCode = 1;
}

nightBench();

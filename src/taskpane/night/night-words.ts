import { clock } from "../../core/program/clock";
import type { Night } from "../../core/program/fit-night";
import type { Block, Program } from "../../core/program/program";
import type { Remedy } from "../../core/program/remedies";
import { spans } from "../../core/program/spans";
import { MONTHS } from "../../workbook/nursery/months";
import type { StatedProgram } from "../../workbook/nursery/program/entries";

const MINUTES = 60;
const MOST_NAMED = 3;

/** Whole minutes in words: `1 h 05 min`, `45 min`. */
export function minutesWords(minutes: number): string {
  const whole = Math.ceil(minutes - 1e-6);
  const hours = Math.floor(whole / MINUTES);
  if (hours === 0) return `${whole} min`;
  return `${hours} h ${String(whole % MINUTES).padStart(2, "0")} min`;
}

/** The same, rounded down: what is left is not made more. */
const wholeMinutesWords = (minutes: number) => minutesWords(Math.floor(minutes + 1e-6));

/** A quantity rounded up to a tenth, so that what is called enough is enough. */
const tenths = (value: number) => String(Math.ceil(value * 10 - 1e-6) / 10);
const flowOf = ({ flow, area, rate }: Block) => flow ?? area * rate;
const lpm = (flow: number) => `${tenths(flow / MINUTES)} L/min`;
const kL = (litres: number) => `${tenths(litres / 1000)} kL`;

/** What a picture of the night belongs to. */
export function titleWords({ pump }: Program, month: number | null, nursery: string): string {
  const night = month ? `${MONTHS[month - 1]} night` : "Night";
  return [nursery, night, `pump ${Math.round((10 * pump) / MINUTES) / 10} L/min`].filter(Boolean).join(" · ");
}

const holders = ({ limit, tank }: Program): string => {
  if (limit === undefined) return "the tank has";
  return tank ? "the day's limit or the tank has" : "the day's limit";
};

/** Which blocks take more than the pump gives, and by how much the largest. */
function tooLarge({ blocks, pump }: Program, over: number): string {
  const watered = blocks.filter(({ depth }) => depth > 0);
  const large = watered.filter((block) => flowOf(block) > pump).sort((a, b) => flowOf(b) - flowOf(a));
  const { name } = large[0]!;
  const wanted = `${lpm(flowOf(large[0]!))}, ${lpm(over)} more`;
  if (large.length === 1) return `${name} wants ${wanted} than the pump gives`;
  const many = large.length === watered.length ? `all ${large.length}` : `${large.length} of ${watered.length}`;
  return `${many} blocks want more than the pump gives; the largest: ${name}, ${wanted}`;
}

/** What is over, each in its own unit. */
export function shortWords(program: Program, { short }: Night): string[] {
  return [
    ...(short.flow > 0 ? [tooLarge(program, short.flow)] : []),
    ...(short.litres > 0 ? [`${kL(short.litres)} more than ${holders(program)}`] : []),
    ...(short.minutes > 0 ? [`${minutesWords(short.minutes)} past the end of the hours`] : []),
  ];
}

/** What the night goes without since the sheet lacks something; "" where it lacks nothing. */
export function lackWords({ program, missing, leftOut }: StatedProgram): string {
  if (leftOut.length === 0) return missing.length === 0 ? "" : `the Program still needs ${missing.join("; ")}`;
  const all = (program?.blocks.length ?? 0) + leftOut.length;
  const others = leftOut.length - MOST_NAMED;
  const named = leftOut.slice(0, MOST_NAMED).join(", ") + (others > 0 ? ` and ${others} more` : "");
  return `${leftOut.length} of ${all} blocks ${leftOut.length === 1 ? "is" : "are"} left out: ${named}`;
}

/** The verdict in a sentence or two; `lack` is what the night goes without, or "". */
export function fitWords(program: Program, night: Night, lack: string): string {
  if (night.fits) {
    const left = spans(program.windows).reduce(
      (sum, { start, end }) => sum + Math.max(0, end - Math.max(start, night.finish)),
      0,
    );
    const spare =
      left > 0 ? `${wholeMinutesWords(left)} of the allowed hours are left` : "just as the allowed hours end";
    const finished = `finished at ${clock(Math.ceil(night.finish))}; ${spare}.`;
    return lack ? `It fits, but ${lack}. Without that: ${finished}` : `It fits: ${finished}`;
  }
  const why = night.proven ? "No order of the blocks can fit." : "No order that was tried fits.";
  return `It does not fit: ${shortWords(program, night).join("; ")}. ${why}${lack && ` Besides, ${lack}.`}`;
}

/** The mark before the verdict: of success only where nothing lacks. */
export const markOf = ({ fits }: Night, lack: string): string => {
  if (!fits) return "✗ ";
  return lack ? "! " : "✓ ";
};

/** How far the result is from the bound that no schedule can beat. */
export function gapWords({ bound, gap, gapShare, short }: Night): string {
  if (short.flow > 0) return "";
  const at = clock(bound);
  if (gap <= 0) return `No order can finish earlier: ${at} is the proven lower bound.`;
  return `Proven lower bound ${at}: nothing can finish before it. This is ${minutesWords(gap)} (${(100 * gapShare).toFixed(1)} %) later at most.`;
}

/** A single change that would do, in words. */
export function remedyWords(program: Program, remedy: Remedy): string {
  const end = spans(program.windows).at(-1)!.end;
  switch (remedy.change) {
    case "pump":
      return `A pump that gives ${lpm(remedy.to)} (now ${lpm(program.pump)})`;
    case "window":
      return `The last hours end ${minutesWords(remedy.minutes)} later, at ${clock(end + remedy.minutes)}`;
    case "limit":
      return `A daily limit of ${kL(remedy.to)} (now ${kL(program.limit!)})`;
    case "tank":
      return `A tank of ${kL(remedy.to)} (now ${kL(program.tank!.volume)})`;
    case "multiplier": {
      const now = program.blocks.find(({ name }) => name === remedy.block)!.multiplier;
      return `${remedy.block} more uniform: a multiplier of ${remedy.to} at most (now ${now})`;
    }
    case "block":
      return `${remedy.block} watered at another time, or from elsewhere`;
    case "apart":
      return `${remedy.pair[0]} and ${remedy.pair[1]} may run together`;
  }
}

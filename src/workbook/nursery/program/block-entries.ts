import { positive, zeroOrMore } from "../../../core/checks";
import { InputError } from "../../../core/errors";
import { jobs } from "../../../core/program/jobs";
import type { Block } from "../../../core/program/program";
import { MONTHS } from "../months";
import { isBlank, nameIn, type Reading } from "./problems";
import type { PlacedCell, ProgramSheet } from "./stated-program";

const MINUTES = 60;

/** What a block lacks, each with the cell that would hold it where that is not on its own line, else "". */
type Lacking = Map<string, string>;

/** The blocks whose lines are whole, and the names of all lines in lower case. */
export function blocksOf(sheet: ProgramSheet, month: number | null, reading: Reading) {
  const names = new Set<string>();
  const blocks = sheet.blocks.flatMap((line) => {
    if (isBlank(line)) return [];
    const name = nameIn(line[0]!);
    if (name !== "" && names.has(name.toLowerCase())) {
      reading.of(line[0]!.place, () => {
        throw new InputError("name", "be one that no other block has", name);
      });
      return [];
    }
    names.add(name.toLowerCase());
    const block = blockOf(sheet, line, month, reading);
    if (!block) return [];
    const place = `${line[0]!.place}:${line.at(-1)!.place.split("!").pop()}`;
    reading.of(place, () => jobs({ blocks: [block], pump: 1, windows: [] }));
    return [block];
  });
  reading.sumUp();
  return { blocks, names };
}

function blockOf(sheet: ProgramSheet, line: PlacedCell[], month: number | null, reading: Reading): Block | undefined {
  const [name, , area, rate, multiplier, , takeUp, rest, flow] = line as [
    PlacedCell,
    PlacedCell,
    PlacedCell,
    PlacedCell,
    PlacedCell,
    PlacedCell,
    PlacedCell,
    PlacedCell,
    PlacedCell,
  ];
  const before = reading.wrong.length;
  const lacking: Lacking = new Map();
  const found = {
    area: reading.optional(area, (value) => positive("area", value, "m²")),
    rate: reading.optional(rate, (value) => positive("MAR", value, "mm/h")),
    multiplier: reading.optional(multiplier, (value) => positive("multiplier", value, "")),
    takeUp: reading.optional(takeUpOf(sheet, line, takeUp), (value) => positive("depth per pulse", value, "mm")),
    rest: reading.optional(rest, (value) => zeroOrMore("rest", value, "min")),
    flow: reading.optional(flow, (value) => positive("flow", value, "L/min")),
  };
  const depth = depthOf(sheet, line, month, reading, lacking);
  if (name.value === null) lacking.set("a name", "");
  if (rate.value === null) lacking.set("MAR", "");
  if (multiplier.value === null) lacking.set("a multiplier", "");
  if (area.value === null && flow.value === null) lacking.set("an area or a flow", "");
  if (lacking.size > 0) {
    const called = nameIn(name) || "a block";
    const all = [...lacking].map(([what, where]) => (where ? `${what} (${where})` : what));
    reading.lacking(all.join(", "), `${called} in ${name.place}`);
    reading.leftOut.push(`${called} (needs ${[...lacking.keys()].join(", ")})`);
  }
  if (reading.wrong.length > before || lacking.size > 0) return undefined;
  return {
    name: nameIn(name),
    area: found.area ?? (60 * found.flow!) / found.rate!,
    rate: found.rate!,
    multiplier: found.multiplier!,
    depth: depth!,
    ...(found.takeUp !== undefined && { takeUp: found.takeUp }),
    ...(found.rest !== undefined && { rest: found.rest }),
    ...(found.flow !== undefined && { flow: found.flow * MINUTES }),
  };
}

/** The column of a line's group on Demand; below 0 where it has none. */
const groupOf = (sheet: ProgramSheet, group: PlacedCell): number =>
  sheet.groups[0]!.findIndex((one) => one.value !== null && nameIn(one) === nameIn(group));

/** The typed depth per pulse, else that of the group. */
const takeUpOf = (sheet: ProgramSheet, line: PlacedCell[], typed: PlacedCell): PlacedCell =>
  typed.value === null ? (sheet.takeUps[0]![groupOf(sheet, line[1]!)] ?? typed) : typed;

/** The typed depth, else that of the group in the month. */
function depthOf(sheet: ProgramSheet, line: PlacedCell[], month: number | null, reading: Reading, lacking: Lacking) {
  const [group, typed] = [line[1]!, line[5]!];
  if (typed.value !== null) return reading.optional(typed, (value) => zeroOrMore("depth", value, "mm"));
  if (group.value === null) {
    lacking.set("a depth or a group", "");
    return undefined;
  }
  const column = groupOf(sheet, group);
  if (column < 0) {
    return reading.of(group.place, () => {
      throw new InputError("group", "be one that Demand has", nameIn(group));
    });
  }
  if (month === null) {
    lacking.set("the month", sheet.month.place);
    return undefined;
  }
  const answer = sheet.depths[month - 1]![column]!;
  if (typeof answer.value === "number") return reading.of(answer.place, () => zeroOrMore("depth", answer.value, "mm"));
  const said = nameIn(answer);
  lacking.set(`the depth of ${nameIn(group)} in ${MONTHS[month - 1]}`, `${answer.place}${said ? `: ${said}` : ""}`);
  return undefined;
}

import { CAUSES, type CauseName } from "../../../src/core/bed/causes/cause-names";
import { causes, headsInReach } from "../../../src/core/bed/causes/causes";
import type { Measured } from "../../../src/core/bed/causes/measured";
import { readBed } from "../../../src/core/bed/read-bed";
import type { MadeBed } from "./made-bed";

/** The causes that the map of the heads does not give by itself. */
const SIX: readonly string[] = [
  "nothing wrong found",
  "one weak head",
  "pressure falls along the line",
  "wind",
  "pressure too low",
  "heads too far apart",
];

/** What was said of one made bed. */
export interface Said {
  made: MadeBed;
  lead: CauseName;
  weight: number;
  named: boolean;
  right: boolean;
  /** Whether the head of "one weak head" is one at fault. */
  rightHead: boolean;
}

export function say(made: MadeBed, measured?: Measured): Said {
  const found = causes(readBed(made.input), measured);
  const { cause, weight } = found.causes[0]!;
  const { head } = found.causes.find((one) => one.cause === "one weak head")!;
  return {
    ...{ made, lead: cause, weight, named: found.doubts.length === 0, right: cause === made.fault },
    rightHead: headsInReach(found.bed) && head !== undefined && made.heads.includes(head),
  };
}

/** Share in %, to one figure after the point; – of none. */
export function share<T>(of: readonly T[], rule: (one: T) => boolean): string {
  return of.length === 0 ? "–" : `${((100 * of.filter(rule).length) / of.length).toFixed(1)}`;
}

export function figures(all: readonly Said[]): string {
  const weak = all.filter(({ made }) => made.fault === "one weak head");
  const found = weak.filter(({ named, right }) => named && right);
  return [
    all.length,
    share(all, ({ right }) => right),
    share(
      all.filter(({ made }) => SIX.includes(made.fault)),
      ({ right }) => right,
    ),
    share(all, ({ named }) => named),
    share(
      all.filter(({ named }) => named),
      ({ right }) => right,
    ),
    share(found, ({ rightHead }) => rightHead),
    share(weak, ({ named, right, rightHead }) => named && right && rightHead),
  ].join(" | ");
}

export function confusion(all: readonly Said[]): string {
  const rows = CAUSES.map((fault) => {
    const made = all.filter((one) => one.made.fault === fault);
    return `| ${fault} | ${CAUSES.map((cause) => made.filter(({ lead }) => lead === cause).length || "").join(" | ")} | ${made.filter(({ named }) => !named).length} |`;
  });
  const short = CAUSES.map((cause) => cause.replace(/^(one|pressure|heads|no heads) /, ""));
  return [
    `| made \\ leading | ${short.join(" | ")} | cannot tell |`,
    `|${" --- |".repeat(CAUSES.length + 2)}`,
    ...rows,
  ].join("\n");
}

/** Whether a cause is named that is none: marking one of two weak heads is not wrong. */
export function wronglyNamed({ made, lead, named, rightHead }: Said): boolean {
  if (!named || lead === "nothing wrong found") return false;
  return !(made.fault === "two weak heads" && lead === "one weak head" && rightHead);
}

/** How often the leading cause is right, by its weight. */
export function calibration(all: readonly Said[]): string {
  const bins = [
    [0, 40],
    [40, 60],
    [60, 70],
    [70, 80],
    [80, 90],
    [90, 101],
  ] as const;
  return bins
    .map(([low, high]) => {
      const within = all.filter(({ weight }) => weight >= low && weight < high);
      return `| ${low} to ${Math.min(high, 100)} % | ${within.length} | ${share(within, ({ right }) => right)} |`;
    })
    .join("\n");
}

import { RUN_TIME } from "../../core/figures/run-time";
import { MONTHS } from "../../workbook/nursery/months";
import { LevelLines, levelsTo } from "../map/picture/levels";
import { INK, PICTURE_WIDTH, Picture } from "../map/picture/plot";
import { figure } from "../parts/figure";
import { titleOf } from "./missing";
import type { Group } from "./read-demand";

const LEFT = 44;
const RIGHT = PICTURE_WIDTH - 14;
const TOP = 48;
const BOTTOM = 236;
const LEGEND_FROM = 282;
const LEGEND_LINE = 17;
const MARK = 4;

/** Told apart by colour (BrBG), by dashes and by marks. */
const LOOKS = [
  { colour: "#543005", dashes: "", mark: "circle", filled: true },
  { colour: "#35978f", dashes: "7 3", mark: "square", filled: true },
  { colour: "#01665e", dashes: "2 3", mark: "triangle", filled: true },
  { colour: "#bf812d", dashes: "9 3 2 3", mark: "circle", filled: false },
  { colour: "#003c30", dashes: "4 2", mark: "square", filled: false },
  { colour: "#8c510a", dashes: "1 2", mark: "triangle", filled: false },
] as const;

const lookOf = (group: Group) => LOOKS[(group.number - 1) % LOOKS.length]!;

function Mark({ x, y, look }: { x: number; y: number; look: (typeof LOOKS)[number] }) {
  const paint = { fill: look.filled ? look.colour : "#ffffff", stroke: look.colour, strokeWidth: 1.5 };
  if (look.mark === "circle") return <circle cx={x} cy={y} r={MARK - 0.5} {...paint} />;
  if (look.mark === "square") {
    return <rect x={x - MARK + 0.5} y={y - MARK + 0.5} width={2 * MARK - 1} height={2 * MARK - 1} {...paint} />;
  }
  return <path d={`M${x},${y - MARK}l${MARK},${2 * MARK - 1}h${-2 * MARK}z`} {...paint} />;
}

/** What the picture shows, in words. */
export function yearWords(groups: readonly Group[]): string {
  const lines = groups.map((group) => {
    const known = group.depths.flatMap((depth, month) => (typeof depth === "number" ? [{ depth, month }] : []));
    if (known.length === 0) return `${titleOf(group)}: no month known`;
    const most = known.reduce((one, other) => (other.depth > one.depth ? other : one));
    const least = known.reduce((one, other) => (other.depth < one.depth ? other : one));
    const of = known.length < MONTHS.length ? `, ${known.length} months known` : "";
    return `${titleOf(group)}: most ${figure(most.depth)} in ${MONTHS[most.month]}, least ${figure(least.depth)} in ${MONTHS[least.month]}${of}`;
  });
  return `${RUN_TIME.NET_DEPTH.short} to water by month, ${RUN_TIME.NET_DEPTH.unit}. ${lines.join("; ")}`;
}

/** The net depth of each group through the year; a month without one is a gap. */
export function YearChart({ groups, title }: { groups: readonly Group[]; title: string }) {
  const most = Math.max(1, ...groups.flatMap(({ depths }) => depths.filter((depth) => typeof depth === "number")));
  const x = (month: number) => LEFT + ((month + 0.5) / MONTHS.length) * (RIGHT - LEFT);
  const levels = levelsTo(most, { left: LEFT, top: TOP, bottom: BOTTOM });
  const { y } = levels;
  return (
    <Picture
      title={title}
      said="net depth to water, mm a day, by month"
      words={yearWords(groups)}
      height={LEGEND_FROM + LEGEND_LINE * groups.length}
    >
      <LevelLines {...levels} />
      {MONTHS.map((month, index) => (
        <text key={month} x={x(index)} y={BOTTOM + 16} textAnchor="middle" fill={INK}>
          {month.slice(0, 3)}
        </text>
      ))}
      {groups.map((group, index) => {
        const look = lookOf(group);
        const line = group.depths
          .map((depth, month) => {
            if (typeof depth !== "number") return "";
            const begins = month === 0 || typeof group.depths[month - 1] !== "number";
            return `${begins ? "M" : "L"}${x(month).toFixed(1)},${y(depth).toFixed(1)}`;
          })
          .join("");
        const legend = LEGEND_FROM + index * LEGEND_LINE;
        return (
          <g key={group.number}>
            <path d={line} fill="none" stroke={look.colour} strokeWidth="2" strokeDasharray={look.dashes} />
            {group.depths.map(
              (depth, month) =>
                typeof depth === "number" && <Mark key={MONTHS[month]} x={x(month)} y={y(depth)} look={look} />,
            )}
            <path
              d={`M${LEFT},${legend - 4}h44`}
              stroke={look.colour}
              strokeWidth="2"
              strokeDasharray={look.dashes}
              fill="none"
            />
            <Mark x={LEFT + 22} y={legend - 4} look={look} />
            <text x={LEFT + 54} y={legend} fill={INK}>
              {titleOf(group)}
            </text>
          </g>
        );
      })}
    </Picture>
  );
}

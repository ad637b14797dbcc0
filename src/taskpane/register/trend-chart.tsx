import { isoDay } from "../../cells/day-number";
import { INK, PAPER, PICTURE_WIDTH, Picture } from "../map/picture/plot";
import { figure } from "../parts/figure";
import type { Trend } from "./trends";

const LEFT = 52;
const RIGHT = PICTURE_WIDTH - 24;
const TOP = 48;
const BOTTOM = 168;
const HEIGHT = 226;
const LINE = "#01665e";
const APART = "#8c510a";
const MARK = 4.5;

/** What a trend says, in words. */
export function trendWords({ title, unit, points }: Trend, block: string): string {
  const said = points.map(
    ({ day, value, joined }) => `${isoDay(day)} ${figure(value)} ${unit}`.trim() + (joined ? "" : " (other basis)"),
  );
  return `${title} of ${block}: ${said.join("; ")}`;
}

/** Low and high end of the scale: the values with a little room, wider where they are all alike. */
function ends(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = high > low ? 0.12 * (high - low) : 0.05 * Math.abs(high) || 1;
  return [low - room, high + room];
}

/** A measure of one block by date; the line joins the audits on the basis of the last one. */
export function TrendChart({ trend, block }: { trend: Trend; block: string }) {
  const { title, unit, points } = trend;
  if (points.length === 0)
    return (
      <p>
        No audit of {block} has a {title}.
      </p>
    );
  const days = points.map(({ day }) => day);
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const [low, high] = ends(points.map(({ value }) => value));
  const x = (day: number) =>
    last > first ? LEFT + 14 + ((day - first) / (last - first)) * (RIGHT - LEFT - 28) : (LEFT + RIGHT) / 2;
  const y = (value: number) => BOTTOM - ((value - low) / (high - low)) * (BOTTOM - TOP);
  const line = points
    .filter(({ joined }) => joined)
    .map(({ day, value }, index) => `${index === 0 ? "M" : "L"}${x(day).toFixed(1)},${y(value).toFixed(1)}`)
    .join("");
  const apart = points.some(({ joined }) => !joined);
  return (
    <Picture
      title={`${title}${unit && ` [${unit}]`}, ${block}`}
      said="by the date of the audit"
      words={trendWords(trend, block)}
      height={HEIGHT}
    >
      {[0, 0.5, 1].map((part) => {
        const value = low + part * (high - low);
        return (
          <g key={part}>
            <path d={`M${LEFT},${y(value)}H${RIGHT}`} stroke="#c8c8c8" strokeWidth={0.6} />
            <text x={LEFT - 6} y={y(value) + 4} textAnchor="end" fill={INK}>
              {figure(value)}
            </text>
          </g>
        );
      })}
      {[...new Set([first, last])].map((day) => (
        <text key={day} x={x(day)} y={BOTTOM + 18} textAnchor="middle" fill={INK}>
          {isoDay(day)}
        </text>
      ))}
      <path d={line} fill="none" stroke={LINE} strokeWidth="2" />
      {points.map(({ day, value, joined }) => (
        <g key={day}>
          {joined ? (
            <circle cx={x(day)} cy={y(value)} r={MARK} fill={LINE} />
          ) : (
            <rect
              x={x(day) - MARK}
              y={y(value) - MARK}
              width={2 * MARK}
              height={2 * MARK}
              fill={PAPER}
              stroke={APART}
              strokeWidth="1.6"
            />
          )}
        </g>
      ))}
      <g fill={INK}>
        <circle cx={LEFT + 6} cy={BOTTOM + 38} r={MARK} fill={LINE} />
        <text x={LEFT + 16} y={BOTTOM + 42}>
          on the basis of the last audit
        </text>
        {apart && (
          <>
            <rect
              x={LEFT + 206}
              y={BOTTOM + 33.5}
              width={2 * MARK}
              height={2 * MARK}
              fill={PAPER}
              stroke={APART}
              strokeWidth="1.6"
            />
            <text x={LEFT + 222} y={BOTTOM + 42}>
              another basis
            </text>
          </>
        )}
      </g>
    </Picture>
  );
}

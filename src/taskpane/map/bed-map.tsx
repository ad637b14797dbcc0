import type { CanField } from "../../core/pattern/can-field";
import { ratesRead } from "../../core/pattern/can-field";
import { RATE_CLASSES, rateClass } from "../../core/pattern/rate-classes";
import { mean } from "../../core/readings";
import { figure } from "../figure";
import { isolines, readGround } from "./contours";
import { LEGEND_HEIGHT, Legend } from "./legend";

/** What a map shows beside the cans. */
export interface MapFacts {
  title: string;
  sentence: string;
  /** Size of the bed [m]; left out where it is not known. */
  width?: number;
  length?: number;
  /** Where heads stand [m]. */
  heads?: readonly { x: number; y: number }[];
}

const PAPER = "#ffffff";
const INK = "#1b1b1b";
const PICTURE_WIDTH = 400;
const MARGIN = { left: 52, right: 16, top: 42, bottom: 44 };
const LONGEST_PX = 560;
/** With more cans than this their rates would overlap. */
const MOST_NUMBERED = 150;

const ring = (points: [number, number][], place: (x: number, y: number) => string) =>
  `M${points.map(([x, y]) => place(x, y)).join("L")}Z`;

function ticks(low: number, high: number): number[] {
  const rough = (high - low) / 6 || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((part) => part * power).find((each) => each >= rough)!;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(6)));
}

/** A bed from above: rates between the cans by class, lines between the classes, the cans, the heads. Always dark on white, as it is printed. */
export function BedMap({ field, facts, id }: { field: CanField; facts: MapFacts; id: string }) {
  const rates = ratesRead(field);
  const m = mean(rates, 2);
  const [low, high] = [Math.min(...rates), Math.max(...rates)];
  const right = facts.width ?? field.across.at(-1)!;
  const bottom = facts.length ?? field.along.at(-1)!;
  const left = facts.width === undefined ? field.across[0]! : 0;
  const top = facts.length === undefined ? field.along[0]! : 0;
  const spare = PICTURE_WIDTH - MARGIN.left - MARGIN.right;
  const pixels = Math.min(spare / (right - left || 1), LONGEST_PX / (bottom - top || 1));
  const height = MARGIN.top + Math.max(40, (bottom - top) * pixels) + MARGIN.bottom;
  const px = (x: number) => MARGIN.left + (x - left) * pixels;
  const py = (y: number) => MARGIN.top + (y - top) * pixels;
  const place = (x: number, y: number) => `${px(x).toFixed(1)},${py(y).toFixed(1)}`;
  const lines = isolines(field, m);
  const ground = readGround(field);
  const total = height + LEGEND_HEIGHT;
  const clip = `${id}-read`;
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${PICTURE_WIDTH} ${total}`}
      width={PICTURE_WIDTH}
      height={total}
      role="img"
      aria-label={`${facts.title}. ${facts.sentence}`}
      fontFamily="Segoe UI, Arial, sans-serif"
      fontSize="11"
      style={{ maxWidth: "100%", height: "auto" }}
    >
      <rect width={PICTURE_WIDTH} height={total} fill={PAPER} />
      <text x={MARGIN.left} y="16" fontSize="13" fontWeight="600" fill={INK}>
        {facts.title}
      </text>
      <text x={MARGIN.left} y="32" fill={INK}>
        mm/h at each can; mean {figure(m)} mm/h
      </text>
      <clipPath id={clip}>
        {ground.map(({ x, y, width, length }) => (
          <rect key={`${x} ${y}`} x={px(x)} y={py(y)} width={width * pixels} height={length * pixels} />
        ))}
      </clipPath>
      <rect
        x={px(left)}
        y={py(top)}
        width={(right - left) * pixels}
        height={(bottom - top) * pixels}
        fill="none"
        stroke={INK}
        strokeDasharray="4 3"
      />
      <g clipPath={`url(#${clip})`}>
        {ground.length > 0 && (
          <rect x={px(left)} y={py(top)} width="100%" height="100%" fill={RATE_CLASSES[0]!.colour} />
        )}
        {lines.map(({ share, rings }, index) => (
          <path
            key={share}
            d={rings.map((points) => ring(points, place)).join("")}
            fillRule="evenodd"
            fill={RATE_CLASSES[index + 1]!.colour}
            stroke={INK}
            strokeWidth="0.8"
          />
        ))}
      </g>
      {field.rates.flatMap((line, row) =>
        line.map((rate, column) => {
          const [x, y] = [px(field.across[column]!), py(field.along[row]!)];
          const key = `${row} ${column}`;
          if (rate === null) {
            return (
              <text key={key} x={x} y={y + 4} textAnchor="middle" fill={INK}>
                ×
              </text>
            );
          }
          const extreme = rate === low ? "driest" : rate === high ? "wettest" : "";
          return (
            <g key={key}>
              <circle
                cx={x}
                cy={y}
                r={extreme ? 5 : 3}
                fill={rateClass(rate, m).colour}
                stroke={INK}
                strokeWidth={extreme ? 2 : 1}
              />
              {(rates.length <= MOST_NUMBERED || extreme) && (
                <text
                  x={x}
                  y={y + 14}
                  textAnchor="middle"
                  fill={INK}
                  stroke={PAPER}
                  strokeWidth="3"
                  paintOrder="stroke"
                  fontWeight={extreme ? 700 : 400}
                >
                  {figure(rate)}
                </text>
              )}
            </g>
          );
        }),
      )}
      {facts.heads?.map(({ x, y }) => (
        <path
          key={`${x} ${y}`}
          d={`M${px(x) - 4},${py(y)}h8M${px(x)},${py(y) - 4}v8`}
          stroke="#7b1fa2"
          strokeWidth="2"
        />
      ))}
      {ticks(left, right).map((x) => (
        <text key={x} x={px(x)} y={py(bottom) + 25} textAnchor="middle" fill={INK}>
          {x}
        </text>
      ))}
      {ticks(top, bottom).map((y) => (
        <text key={y} x={px(left) - 18} y={py(y) + 4} textAnchor="end" fill={INK}>
          {y}
        </text>
      ))}
      <text x={px(left)} y={py(bottom) + 38} fill={INK}>
        m across the width; m along the length at the side
      </text>
      <Legend rates={rates} mean={m} top={height} heads={(facts.heads?.length ?? 0) > 0} />
    </svg>
  );
}

import { INK, PICTURE_WIDTH, stepOf } from "./plot";

const RIGHT = PICTURE_WIDTH - 14;

/** Where values from 0 on are in a picture [px]. */
export interface Levels {
  left: number;
  y: (value: number) => number;
  values: number[];
}

/** Levels from 0 to the first that is not below the highest value. */
export function levelsTo(most: number, { left, top, bottom }: { left: number; top: number; bottom: number }): Levels {
  const step = stepOf(most);
  const count = Math.ceil(most / step - 1e-9);
  return {
    left,
    y: (value) => bottom - (value / (count * step)) * (bottom - top),
    values: Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(6))),
  };
}

/** A line across at each level, with its value at the left. */
export function LevelLines({ left, y, values }: Levels) {
  return values.map((value) => (
    <g key={value}>
      <path d={`M${left},${y(value)}H${RIGHT}`} stroke="#c8c8c8" strokeWidth={value === 0 ? 1.5 : 0.6} />
      <text x={left - 7} y={y(value) + 4} textAnchor="end" fill={INK}>
        {value.toLocaleString("en-AU")}
      </text>
    </g>
  ));
}

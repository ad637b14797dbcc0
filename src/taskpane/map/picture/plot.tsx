import type { ReactNode } from "react";

/** A rectangle of ground [m]. */
export interface Ground {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** Where ground lies in a picture [px]. */
export interface Plot {
  x: (metres: number) => number;
  y: (metres: number) => number;
  /** Pixels a metre. */
  scale: number;
  /** `x,y` of a place, for paths. */
  place: (x: number, y: number) => string;
  /** Height of the plot with its axes. */
  height: number;
}

export const INK = "#1b1b1b";
export const PAPER = "#ffffff";
export const PICTURE_WIDTH = 400;
const MARGIN = { left: 52, right: 16, top: 42, bottom: 44 };
const LONGEST_PX = 560;
const LEAST_PX = 40;

/** Fits ground into the width of a picture, to scale. */
export function plotOf({ left, top, right, bottom }: Ground): Plot {
  const spare = PICTURE_WIDTH - MARGIN.left - MARGIN.right;
  const scale = Math.min(spare / (right - left || 1), LONGEST_PX / (bottom - top || 1));
  const x = (metres: number) => MARGIN.left + (metres - left) * scale;
  const y = (metres: number) => MARGIN.top + (metres - top) * scale;
  return {
    x,
    y,
    scale,
    place: (px, py) => `${x(px).toFixed(1)},${y(py).toFixed(1)}`,
    height: MARGIN.top + Math.max(LEAST_PX, (bottom - top) * scale) + MARGIN.bottom,
  };
}

/** The step of 1, 2 or 5 times a power of ten that divides a span into six at most. */
export function stepOf(span: number): number {
  const rough = span / 6 || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  return [1, 2, 5, 10].map((part) => part * power).find((each) => each >= rough)!;
}

function ticks(low: number, high: number): number[] {
  const step = stepOf(high - low);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(6)));
}

/** Metres along both sides of a plot. */
export function Axes({ ground, plot }: { ground: Ground; plot: Plot }) {
  const { left, top, right, bottom } = ground;
  return (
    <g fill={INK}>
      {ticks(left, right).map((metres) => (
        <text key={metres} x={plot.x(metres)} y={plot.y(bottom) + 25} textAnchor="middle">
          {metres}
        </text>
      ))}
      {ticks(top, bottom).map((metres) => (
        <text key={metres} x={plot.x(left) - 18} y={plot.y(metres) + 4} textAnchor="end">
          {metres}
        </text>
      ))}
      <text x={plot.x(left)} y={plot.y(bottom) + 38}>
        m across the width; m along the length at the side
      </text>
    </g>
  );
}

/** Where a title begins, and how many letters of its size fit a picture: one line, or each of two smaller ones. */
const TITLE_LEFT = 16;
const LETTERS = 46;
const SMALLER_LETTERS = 56;

/** A title in one line, or in two of which the second ends in … where even that is too short. */
export function titleLines(title: string): string[] {
  if (title.length <= LETTERS) return [title];
  const space = title.lastIndexOf(" ", SMALLER_LETTERS);
  const end = space > 0 ? space : SMALLER_LETTERS;
  const rest = title.slice(end).trim();
  return [title.slice(0, end), rest.length > SMALLER_LETTERS ? `${rest.slice(0, SMALLER_LETTERS - 2)} …` : rest];
}

interface PictureProps {
  title: string;
  /** The line under the title. */
  said: string;
  /** What it shows, for those who don't see it. */
  words: string;
  height: number;
  children: ReactNode;
}

/** A picture on white in any theme, since it is printed and goes into the workbook. */
export function Picture({ title, said, words, height, children }: PictureProps) {
  const lines = titleLines(title);
  const [top, size] = lines.length === 1 ? [16, 13] : [12, 11];
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${PICTURE_WIDTH} ${height}`}
      width={PICTURE_WIDTH}
      height={height}
      role="img"
      aria-label={words}
      fontFamily="Segoe UI, Arial, sans-serif"
      fontSize="11"
      style={{ maxWidth: "100%", height: "auto" }}
    >
      <rect width={PICTURE_WIDTH} height={height} fill={PAPER} />
      {lines.map((line, index) => (
        <text key={line} x={TITLE_LEFT} y={top + index * 12} fontSize={size} fontWeight="600" fill={INK}>
          {line}
        </text>
      ))}
      <text x={TITLE_LEFT} y={lines.length === 1 ? 32 : 36} fill={INK}>
        {said}
      </text>
      {children}
    </svg>
  );
}

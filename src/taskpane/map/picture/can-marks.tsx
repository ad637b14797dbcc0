import { type CanField, ratesRead } from "../../../core/pattern/can-field";
import { rateClass } from "../../../core/pattern/rate-classes";
import { INK, PAPER, type Plot } from "./plot";

/** With more cans than this their rates would overlap. */
const MOST_NUMBERED = 150;

interface CanProps {
  x: number;
  y: number;
  rate: number | null;
  said: (rate: number) => string;
  mean: number;
  extreme: boolean;
  numbered: boolean;
  /** Whether its rate is written above it. */
  above: boolean;
}

function Can({ x, y, rate, said, mean: m, extreme, numbered, above }: CanProps) {
  if (rate === null) {
    return (
      <text x={x} y={y + 4} textAnchor="middle" fill={INK}>
        ×
      </text>
    );
  }
  return (
    <>
      <circle
        cx={x}
        cy={y}
        r={extreme ? 5 : 3}
        fill={rateClass(Math.max(0, rate), m).colour}
        stroke={INK}
        strokeWidth={extreme ? 2 : 1}
      />
      {(numbered || extreme) && (
        <text
          x={x}
          y={above ? y - 8 : y + 15}
          textAnchor="middle"
          fill={INK}
          stroke={PAPER}
          strokeWidth="3"
          paintOrder="stroke"
          fontWeight={extreme ? 700 : 400}
        >
          {said(rate)}
        </text>
      )}
    </>
  );
}

interface CansProps {
  field: CanField;
  /** Their crosses and numbers are kept readable. */
  heads: readonly { x: number; y: number }[];
  plot: Plot;
  mean: number;
  /** What is written beside a can. */
  said: (rate: number) => string;
}

/** A head this near to the middle of a rate hides it, or is hidden by it [px]. */
const NEAR_PX = 14;
const BELOW_PX = 12;

/** Whether a head is where a can's rate is written by habit, below it, and none is above it. */
export function isAbove(
  can: { x: number; y: number },
  heads: readonly { x: number; y: number }[],
  plot: Plot,
): boolean {
  const taken = (dy: number) =>
    heads.some(({ x, y }) => Math.hypot(plot.x(x) - plot.x(can.x), plot.y(y) - plot.y(can.y) - dy) < NEAR_PX);
  return taken(BELOW_PX) && !taken(-BELOW_PX);
}

/** The cans of a bed in the colours of their classes, each with its number. */
export function CanMarks({ field, heads, plot, mean: m, said }: CansProps) {
  const rates = ratesRead(field);
  const [low, high] = [Math.min(...rates), Math.max(...rates)];
  return field.rates.flatMap((line, row) =>
    line.map((rate, column) => (
      <Can
        key={`${field.across[column]} ${field.along[row]}`}
        x={plot.x(field.across[column]!)}
        y={plot.y(field.along[row]!)}
        rate={rate}
        said={said}
        mean={m}
        extreme={rate === low || rate === high}
        numbered={rates.length <= MOST_NUMBERED}
        above={isAbove({ x: field.across[column]!, y: field.along[row]! }, heads, plot)}
      />
    )),
  );
}

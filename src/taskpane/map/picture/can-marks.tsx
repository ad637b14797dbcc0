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
}

function Can({ x, y, rate, said, mean: m, extreme, numbered }: CanProps) {
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
          y={y + 15}
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
  plot: Plot;
  mean: number;
  /** What is written beside a can. */
  said: (rate: number) => string;
}

/** The cans of a bed in the colours of their classes, each with its number. */
export function CanMarks({ field, plot, mean: m, said }: CansProps) {
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
      />
    )),
  );
}

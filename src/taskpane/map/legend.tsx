import { RATE_CLASSES, rateClass } from "../../core/pattern/rate-classes";

const LINE_PX = 17;
const INK = "#1b1b1b";
export const LEGEND_HEIGHT = (RATE_CLASSES.length + 2) * LINE_PX + 8;

interface Props {
  rates: readonly number[];
  mean: number;
  top: number;
  heads: boolean;
}

/** The seven classes with colour, symbol and range, and how many cans belong to each. */
export function Legend({ rates, mean, top, heads }: Props) {
  const counts = RATE_CLASSES.map(() => 0);
  for (const rate of rates) counts[rateClass(rate, mean).number - 1]! += 1;
  const y = (line: number) => top + line * LINE_PX + 12;
  return (
    <g fill={INK}>
      <text x="40" y={y(0)} fontWeight="600">
        Rate over the mean
      </text>
      <text x="300" y={y(0)} textAnchor="end" fontWeight="600">
        cans
      </text>
      <text x="350" y={y(0)} textAnchor="end" fontWeight="600">
        share
      </text>
      {RATE_CLASSES.map(({ number, symbol, range, colour }, index) => (
        <g key={number}>
          <rect x="40" y={y(index + 1) - 10} width="20" height="12" fill={colour} stroke={INK} strokeWidth="0.8" />
          <text x="68" y={y(index + 1)}>
            {number}
          </text>
          <text x="84" y={y(index + 1)}>
            {symbol}
          </text>
          <text x="124" y={y(index + 1)}>
            {range}
          </text>
          <text x="300" y={y(index + 1)} textAnchor="end">
            {counts[index]}
          </text>
          <text x="350" y={y(index + 1)} textAnchor="end">
            {Math.round((100 * counts[index]!) / rates.length)} %
          </text>
        </g>
      ))}
      <text x="40" y={y(RATE_CLASSES.length + 1)}>
        Thick rings: driest and wettest can. ×: not read.{heads ? " Crosses: heads." : ""}
      </text>
    </g>
  );
}

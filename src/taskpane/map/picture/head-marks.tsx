import { PAPER, type Plot } from "./plot";

const HEAD = "#7b1fa2";
const ARM_PX = 4;
const MARK_PX = 10;
/** With more heads than this their numbers would overlap. */
const MOST_NUMBERED = 60;

interface Props {
  heads: readonly { x: number; y: number; number?: number }[];
  /** The head in question. */
  marked?: { x: number; y: number } | undefined;
  plot: Plot;
}

/** A cross where each head is, with its number, and a square round the one in question. */
export function HeadMarks({ heads, marked, plot }: Props) {
  return (
    <>
      {heads.map(({ x, y, number }, index) => (
        <g key={`${x} ${y}`}>
          <path
            d={`M${plot.x(x) - ARM_PX},${plot.y(y)}h${2 * ARM_PX}M${plot.x(x)},${plot.y(y) - ARM_PX}v${2 * ARM_PX}`}
            stroke={HEAD}
            strokeWidth="2"
            fill="none"
          />
          {heads.length <= MOST_NUMBERED && (
            <text
              className="head-number"
              x={plot.x(x) + ARM_PX}
              y={plot.y(y) - ARM_PX}
              fontSize="9"
              fontWeight="600"
              fill={HEAD}
              stroke={PAPER}
              strokeWidth="2.5"
              paintOrder="stroke"
            >
              {number ?? index + 1}
            </text>
          )}
        </g>
      ))}
      {marked && (
        <rect
          className="marked-head"
          x={plot.x(marked.x) - MARK_PX}
          y={plot.y(marked.y) - MARK_PX}
          width={2 * MARK_PX}
          height={2 * MARK_PX}
          stroke={HEAD}
          strokeWidth="3"
          fill="none"
        />
      )}
    </>
  );
}

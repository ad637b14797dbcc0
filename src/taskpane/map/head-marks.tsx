import type { Plot } from "./plot";

const HEAD = "#7b1fa2";
const ARM_PX = 4;
const MARK_PX = 10;

interface Props {
  heads: readonly { x: number; y: number }[];
  /** The head in question. */
  marked?: { x: number; y: number } | undefined;
  plot: Plot;
}

/** A cross where each head is, and a square round the one in question. */
export function HeadMarks({ heads, marked, plot }: Props) {
  return (
    <>
      {heads.map(({ x, y }) => (
        <path
          key={`${x} ${y}`}
          d={`M${plot.x(x) - ARM_PX},${plot.y(y)}h${2 * ARM_PX}M${plot.x(x)},${plot.y(y) - ARM_PX}v${2 * ARM_PX}`}
          stroke={HEAD}
          strokeWidth="2"
          fill="none"
        />
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

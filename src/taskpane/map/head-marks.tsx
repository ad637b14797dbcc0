import type { Plot } from "./plot";

const HEAD = "#7b1fa2";
const ARM_PX = 4;

/** A cross where each head is. */
export function HeadMarks({ heads, plot }: { heads: readonly { x: number; y: number }[]; plot: Plot }) {
  return heads.map(({ x, y }) => (
    <path
      key={`${x} ${y}`}
      d={`M${plot.x(x) - ARM_PX},${plot.y(y)}h${2 * ARM_PX}M${plot.x(x)},${plot.y(y) - ARM_PX}v${2 * ARM_PX}`}
      stroke={HEAD}
      strokeWidth="2"
      fill="none"
    />
  ));
}

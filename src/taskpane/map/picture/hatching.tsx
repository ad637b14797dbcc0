import { INK, type Plot } from "./plot";

interface Props {
  /** The ground to be hatched [m]. */
  across: readonly number[];
  along: readonly number[];
  plot: Plot;
  /** Tells the pictures of a page apart. */
  id: string;
}

/** Hatches the ground between the outer cans; what is known is drawn over it. */
export function Hatching({ across, along, plot, id }: Props) {
  const hatch = `${id}-hatch`;
  const [left, right, top, bottom] = [across[0]!, across.at(-1)!, along[0]!, along.at(-1)!];
  return (
    <>
      <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1="0" y1="0" x2="0" y2="6" stroke={INK} strokeWidth="0.8" opacity="0.5" />
      </pattern>
      <rect
        x={plot.x(left)}
        y={plot.y(top)}
        width={(right - left) * plot.scale}
        height={(bottom - top) * plot.scale}
        fill={`url(#${hatch})`}
      />
    </>
  );
}

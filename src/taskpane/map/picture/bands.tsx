import { RATE_CLASSES } from "../../../core/pattern/rate-classes";
import { type Band, ringPath } from "./class-bands";
import { labelPlace } from "./line-label";
import { INK, PAPER, type Plot } from "./plot";

interface Props {
  bands: readonly Band[];
  plot: Plot;
  /** The ground that may be coloured [m]. */
  ground: readonly { x: number; y: number; width: number; length: number }[];
  /** Places that labels keep clear of [m]. */
  marks: readonly (readonly [x: number, y: number])[];
  /** Tells the pictures of a page apart. */
  id: string;
}

/** The classes over ground, with a line between each two that says its share of the mean. */
export function Bands({ bands, plot, ground, marks, id }: Props) {
  const taken = [...marks];
  const labels = bands.flatMap((band) => {
    const place = labelPlace(band, ground, taken);
    if (place) taken.push(place);
    return place ? [{ band, place }] : [];
  });
  const clip = `${id}-ground`;
  const pixels = ({ x, y, width, length }: Props["ground"][number]) => ({
    x: plot.x(x),
    y: plot.y(y),
    width: width * plot.scale,
    height: length * plot.scale,
  });
  return (
    <>
      <clipPath id={clip}>
        {ground.map((part) => (
          <rect key={`${part.x} ${part.y}`} {...pixels(part)} />
        ))}
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {ground.map((part) => (
          <rect key={`${part.x} ${part.y}`} {...pixels(part)} fill={RATE_CLASSES[0]!.colour} />
        ))}
        {bands.map((band) => (
          <path
            key={band.number}
            d={ringPath(band, plot.place)}
            fillRule="evenodd"
            fill={band.colour}
            stroke={INK}
            strokeWidth="0.8"
          />
        ))}
      </g>
      {labels.map(({ band, place }) => (
        <text
          key={band.number}
          x={plot.x(place[0])}
          y={plot.y(place[1]) + 3}
          textAnchor="middle"
          fontSize="9"
          fill={INK}
          stroke={PAPER}
          strokeWidth="3"
          paintOrder="stroke"
        >
          {Math.round(100 * band.share)} %
        </text>
      ))}
    </>
  );
}

import type { Head } from "../../core/layout/heads";
import { Bands } from "../map/picture/bands";
import { classBands } from "../map/picture/class-bands";
import { HeadMarks } from "../map/picture/head-marks";
import { LEGEND_HEIGHT, Legend } from "../map/picture/legend";
import { Axes, type Ground, INK, Picture, type Plot, plotOf } from "../map/picture/plot";
import { figure } from "../parts/figure";
import { type Drag, DragHandles } from "./drag-handles";
import { layoutName } from "./layout-name";
import type { Planned } from "./worker/messages";

/** Part of the longer side of the bed that is shown of the ground beside it where water falls there, and where none does. */
const BESIDE_WET = 0.15;
const BESIDE_DRY = 0.03;

/** What a map of a layout shows beside the classes. */
export const KEY_WORDS = "Crosses: heads, numbered; dotted: what each wets. No wind.";

interface Props {
  planned: Planned;
  id: string;
  title?: string;
  /** Told when the bed or a gap is dragged to another size; left out where nothing can be dragged. */
  drag?: Drag;
  /** Ground shown; left out: that of this layout. Layouts over the same ground have the same scale. */
  over?: Ground;
  /** Whether the key of the classes is left to another picture. */
  keyElsewhere?: boolean;
  /** The cans of a plan, numbered. */
  cans?: readonly { x: number; y: number; number: number }[];
}

/** The ground that a plan shows: the bed and some of what lies beside it. */
export function groundOf({ plan, coverage }: Planned): Ground {
  const reach = plan.profile.distances.at(-1)!;
  const beside = coverage.outside > 0 ? BESIDE_WET : BESIDE_DRY;
  const margin = Math.min(reach, beside * Math.max(plan.width, plan.length));
  return { left: -margin, right: plan.width + margin, top: -margin, bottom: plan.length + margin };
}

/** What a head wets, as the outline of a circle or of the part of it that faces the bed. */
function Throw({ head, reach, plot }: { head: Head; reach: number; plot: Plot }) {
  const [x, y, r] = [plot.x(head.x), plot.y(head.y), reach * plot.scale];
  const { across, along } = head;
  if (across === 0 && along === 0) return <circle cx={x} cy={y} r={r} />;
  if (across !== 0 && along !== 0) {
    const [endX, endY] = [x + across * r, y + along * r];
    return <path d={`M${x},${y}H${endX}A${r},${r} 0 0 ${across === along ? 1 : 0} ${x},${endY}Z`} />;
  }
  if (across !== 0) return <path d={`M${x},${y - r}A${r},${r} 0 0 ${across > 0 ? 1 : 0} ${x},${y + r}Z`} />;
  return <path d={`M${x - r},${y}A${r},${r} 0 0 ${along > 0 ? 0 : 1} ${x + r},${y}Z`} />;
}

/** A layout from above, to scale: the rate in the bed by class with its isolines, heads and what each wets. */
export function LayoutMap({ planned, id, title, drag, over, keyElsewhere = false, cans = [] }: Props) {
  const { plan, coverage, judgement } = planned;
  const { cells, rates, heads } = coverage;
  const ground = over ?? groundOf(planned);
  const plot = plotOf(ground);
  const reach = plan.profile.distances.at(-1)!;
  const bed = { x: 0, y: 0, width: plan.width, length: plan.length };
  const bands = classBands(
    {
      values: rates.values,
      columns: rates.columns,
      rows: rates.rows,
      x: (column) => (column + 0.5) * cells.cellWidth,
      y: (row) => (row + 0.5) * cells.cellLength,
    },
    judgement.meanRate,
  );
  const marks = heads.map(({ x, y }) => [x, y] as const);
  const name = title ?? layoutName(plan);
  return (
    <Picture
      title={name}
      said={`rate in the bed; mean ${figure(judgement.meanRate)} mm/h; cells of ${plan.cell} m`}
      words={`${name}: ${heads.length} heads over a bed of ${plan.width} by ${plan.length} m, mean ${figure(judgement.meanRate)} mm/h`}
      height={plot.height + (keyElsewhere ? 0 : LEGEND_HEIGHT)}
    >
      <Bands bands={bands} plot={plot} ground={[bed]} marks={marks} id={id} />
      <rect
        x={plot.x(0)}
        y={plot.y(0)}
        width={plan.width * plot.scale}
        height={plan.length * plot.scale}
        fill="none"
        stroke={INK}
        strokeWidth="1.5"
      />
      <clipPath id={`${id}-shown`}>
        <rect
          x={plot.x(ground.left)}
          y={plot.y(ground.top)}
          width={(ground.right - ground.left) * plot.scale}
          height={(ground.bottom - ground.top) * plot.scale}
        />
      </clipPath>
      <g clipPath={`url(#${id}-shown)`} fill="none" stroke="#7b1fa2" strokeWidth="0.6" strokeDasharray="2 3">
        {heads.map((head) => (
          <Throw key={`${head.x} ${head.y}`} head={head} reach={reach} plot={plot} />
        ))}
      </g>
      <HeadMarks heads={heads} plot={plot} />
      {cans.map(({ x, y, number }) => (
        <g key={number}>
          <circle cx={plot.x(x)} cy={plot.y(y)} r="7.5" fill="#ffffff" stroke={INK} />
          <text x={plot.x(x)} y={plot.y(y) + 3} textAnchor="middle" fontSize="8" fill={INK}>
            {number}
          </text>
        </g>
      ))}
      {drag && <DragHandles planned={planned} plot={plot} drag={drag} />}
      <Axes ground={ground} plot={plot} />
      {!keyElsewhere && (
        <Legend rates={rates.values} mean={judgement.meanRate} top={plot.height} of="cells">
          {KEY_WORDS}
          {cans.length > 0 && (
            <tspan x="40" dy="13">
              Circles: cans.
            </tspan>
          )}
        </Legend>
      )}
    </Picture>
  );
}

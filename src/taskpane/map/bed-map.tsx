import { type CanField, ratesRead } from "../../core/pattern/can-field";
import { mean } from "../../core/readings";
import { figure } from "../parts/figure";
import { type FittedView, mapView } from "./map-view";
import { Bands } from "./picture/bands";
import { readGround } from "./picture/can-bands";
import { CanMarks } from "./picture/can-marks";
import { Hatching } from "./picture/hatching";
import { HeadMarks } from "./picture/head-marks";
import { LEGEND_HEIGHT, Legend } from "./picture/legend";
import { Axes, INK, Picture, plotOf } from "./picture/plot";

/** What a map shows beside the cans. */
export interface MapFacts {
  title: string;
  sentence: string;
  /** Size of the bed [m]; left out where it is not known. */
  width?: number | undefined;
  length?: number | undefined;
  /** Mean of the bed by area [mm/h]; left out: that of the cans. */
  mean?: number | undefined;
  /** Where heads are [m]. */
  heads?: readonly { x: number; y: number; number?: number }[];
  /** The head that the cans point to [m]. */
  marked?: { x: number; y: number; number: number } | undefined;
}

interface Props {
  field: CanField;
  facts: MapFacts;
  id: string;
  /** The fitted bed, or what the cans differ from it, instead of the ground between the cans. */
  shown?: FittedView | undefined;
}

/** A bed from above: rates between the cans by class, the lines between the classes, the cans and the heads. */
export function BedMap({ field, facts, id, shown }: Props) {
  const { across, along } = field;
  const rates = ratesRead(field);
  const m = facts.mean ?? mean(rates, 2);
  const drawn = mapView(field, m, facts, shown);
  const ground = {
    left: facts.width === undefined ? across[0]! : 0,
    right: facts.width ?? across.at(-1)!,
    top: facts.length === undefined ? along[0]! : 0,
    bottom: facts.length ?? along.at(-1)!,
  };
  const plot = plotOf(ground);
  const coloured = drawn.ground ?? readGround(field);
  const holed = !drawn.ground && coloured.length < (across.length - 1) * (along.length - 1);
  const heads = facts.heads ?? [];
  const marks = [
    ...along.flatMap((y) => across.map((x) => [x, y] as const)),
    ...heads.map(({ x, y }) => [x, y] as const),
  ];
  return (
    <Picture
      title={facts.title}
      said={`${drawn.said}; mean ${figure(m)} mm/h`}
      words={`${facts.title}. ${facts.sentence}`}
      height={plot.height + LEGEND_HEIGHT}
    >
      {holed && <Hatching {...{ across, along, plot, id }} />}
      <Bands bands={drawn.bands} plot={plot} ground={coloured} marks={marks} id={id} />
      <rect
        x={plot.x(ground.left)}
        y={plot.y(ground.top)}
        width={(ground.right - ground.left) * plot.scale}
        height={(ground.bottom - ground.top) * plot.scale}
        fill="none"
        stroke={INK}
        strokeDasharray="4 3"
      />
      <HeadMarks heads={heads} marked={facts.marked} plot={plot} />
      <CanMarks field={drawn.cans} heads={heads} plot={plot} mean={m} said={drawn.number} />
      <Axes ground={ground} plot={plot} />
      <Legend
        rates={drawn.rates}
        mean={m}
        top={plot.height}
        of={drawn.of}
        {...(drawn.classes && { classes: drawn.classes })}
      >
        Thick rings: driest and wettest can.{heads.length > 0 ? " Crosses: heads, numbered." : ""}
        {facts.marked && (
          <tspan x="40" dy="14">
            Square: head {facts.marked.number}.
          </tspan>
        )}
        {rates.length < marks.length && (
          <tspan x="40" dy="14">
            ×: not read.{holed && " No rate is known round it, so that ground is hatched."}
          </tspan>
        )}
      </Legend>
    </Picture>
  );
}

import { type CanField, ratesRead } from "../../core/pattern/can-field";
import { rateClass } from "../../core/pattern/rate-classes";
import { mean } from "../../core/readings";
import { figure } from "../parts/figure";
import { Bands } from "./bands";
import { canBands, readGround } from "./can-bands";
import { Hatching } from "./hatching";
import { HeadMarks } from "./head-marks";
import { LEGEND_HEIGHT, Legend } from "./legend";
import { Axes, INK, PAPER, Picture, type Plot, plotOf } from "./plot";

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

/** With more cans than this their rates would overlap. */
const MOST_NUMBERED = 150;

interface CanProps {
  x: number;
  y: number;
  rate: number | null;
  mean: number;
  extreme: boolean;
  numbered: boolean;
}

function Can({ x, y, rate, mean: m, extreme, numbered }: CanProps) {
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
        fill={rateClass(rate, m).colour}
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
          {figure(rate)}
        </text>
      )}
    </>
  );
}

function Cans({ field, plot, mean: m }: { field: CanField; plot: Plot; mean: number }) {
  const rates = ratesRead(field);
  const [low, high] = [Math.min(...rates), Math.max(...rates)];
  return field.rates.flatMap((line, row) =>
    line.map((rate, column) => (
      <Can
        key={`${field.across[column]} ${field.along[row]}`}
        x={plot.x(field.across[column]!)}
        y={plot.y(field.along[row]!)}
        rate={rate}
        mean={m}
        extreme={rate === low || rate === high}
        numbered={rates.length <= MOST_NUMBERED}
      />
    )),
  );
}

/** A bed from above: rates between the cans by class, the lines between the classes, the cans and the heads. */
export function BedMap({ field, facts, id }: { field: CanField; facts: MapFacts; id: string }) {
  const { across, along } = field;
  const rates = ratesRead(field);
  const m = facts.mean ?? mean(rates, 2);
  const ground = {
    left: facts.width === undefined ? across[0]! : 0,
    right: facts.width ?? across.at(-1)!,
    top: facts.length === undefined ? along[0]! : 0,
    bottom: facts.length ?? along.at(-1)!,
  };
  const plot = plotOf(ground);
  const coloured = readGround(field);
  const holed = coloured.length < (across.length - 1) * (along.length - 1);
  const heads = facts.heads ?? [];
  const marks = along.flatMap((y) => across.map((x) => [x, y] as const));
  return (
    <Picture
      title={facts.title}
      said={`mm/h at each can; mean ${figure(m)} mm/h`}
      words={`${facts.title}. ${facts.sentence}`}
      height={plot.height + LEGEND_HEIGHT}
    >
      {holed && <Hatching {...{ across, along, plot, id }} />}
      <Bands bands={canBands(field, m)} plot={plot} ground={coloured} marks={marks} id={id} />
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
      <Cans field={field} plot={plot} mean={m} />
      <Axes ground={ground} plot={plot} />
      <Legend rates={rates} mean={m} top={plot.height} of="cans">
        Thick rings: driest and wettest can.{heads.length > 0 ? " Crosses: heads, numbered." : ""}
        {facts.marked && ` Square: head ${facts.marked.number}.`}
        {rates.length < marks.length && (
          <tspan x="40" dy="14">
            ×: not read.{holed && " No rate is known round it, so that ground is hatched."}
          </tspan>
        )}
      </Legend>
    </Picture>
  );
}

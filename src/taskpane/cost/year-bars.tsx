import { COSTS } from "../../core/figures/costs";
import { LevelLines, levelsTo } from "../map/picture/levels";
import { INK, PAPER, Picture } from "../map/picture/plot";
import type { NamedCells } from "../workbook/named";
import { costOf, KINDS, money, type Span } from "./read-costs";

const TOP = 48;
const BOTTOM = 260;
const LEFT = 56;
const BAR = 78;
const LEGEND_FROM = BOTTOM + 44;
const LEGEND_LINE = 18;
/** A part lower than this holds no number [px]. */
const LEAST_PX = 13;

/** Told apart by colour (BrBG) and by the number in them. */
const LOOKS = [
  { fill: "#003c30", ink: PAPER },
  { fill: "#80cdc1", ink: INK },
  { fill: "#bf812d", ink: INK },
  { fill: "#f6e8c3", ink: INK },
  { fill: "#8c510a", ink: PAPER },
] as const;

const SPANS: readonly Span[] = ["Now", "After"];

const likely = (found: NamedCells, span: Span) =>
  KINDS.map((kind, index) => ({
    number: index + 1,
    label: COSTS[kind].name,
    value: costOf(found, kind, span).likely ?? 0,
  }));

/** What the picture shows, in words. */
export function barWords(found: NamedCells): string {
  return SPANS.map((span) => {
    const total = costOf(found, "Total", span).likely;
    if (total === undefined) return `${span}: not known`;
    const parts = likely(found, span).filter(({ value }) => value > 0);
    return `${span} ${money(total)}: ${parts.map(({ label, value }) => `${label.toLowerCase()} ${money(value)}`).join(", ")}`;
  }).join("; ");
}

/** Costs of a year now and after, one column each, kind upon kind. */
export function YearBars({ found, title }: { found: NamedCells; title: string }) {
  const totals = SPANS.map((span) => costOf(found, "Total", span).likely ?? 0);
  const most = Math.max(...totals, 1);
  const levels = levelsTo(most, { left: LEFT, top: TOP, bottom: BOTTOM });
  const { y } = levels;
  return (
    <Picture
      title={title}
      said="costs of a year at the likely prices"
      words={barWords(found)}
      height={LEGEND_FROM + LEGEND_LINE * KINDS.length}
    >
      <LevelLines {...levels} />
      {SPANS.map((span, column) => {
        const left = LEFT + 50 + column * 150;
        let under = 0;
        return (
          <g key={span}>
            {totals[column]! > 0 &&
              likely(found, span).map(({ number, label, value }) => {
                const [low, high] = [y(under), y(under + value)];
                under += value;
                const look = LOOKS[number - 1]!;
                return (
                  <g key={label}>
                    <rect
                      x={left}
                      y={high}
                      width={BAR}
                      height={low - high}
                      fill={look.fill}
                      stroke={INK}
                      strokeWidth="0.7"
                    />
                    {low - high >= LEAST_PX && (
                      <text x={left + BAR / 2} y={(low + high) / 2 + 4} textAnchor="middle" fill={look.ink}>
                        {number}
                      </text>
                    )}
                  </g>
                );
              })}
            <text x={left + BAR / 2} y={BOTTOM + 17} textAnchor="middle" fill={INK}>
              {totals[column]! > 0 ? `${span} ${money(totals[column]!)}` : `${span}: not known`}
            </text>
          </g>
        );
      })}
      {likely(found, "Now").map(({ number, label, value }) => (
        <g key={label}>
          <rect
            x={LEFT}
            y={LEGEND_FROM + (number - 1) * LEGEND_LINE - 11}
            width="22"
            height="14"
            fill={LOOKS[number - 1]!.fill}
            stroke={INK}
            strokeWidth="0.7"
          />
          <text
            x={LEFT + 11}
            y={LEGEND_FROM + (number - 1) * LEGEND_LINE}
            textAnchor="middle"
            fill={LOOKS[number - 1]!.ink}
          >
            {number}
          </text>
          <text x={LEFT + 32} y={LEGEND_FROM + (number - 1) * LEGEND_LINE} fill={INK}>
            {label}
            {value === 0 && ": none counted"}
          </text>
        </g>
      ))}
    </Picture>
  );
}

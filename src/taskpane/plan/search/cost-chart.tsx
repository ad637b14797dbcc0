import { DRY_SPOTS } from "../../../core/layout/judgement";
import { type LayoutBasis, layoutMultiplier } from "../../../core/layout/multiplier";
import type { Candidate } from "../../../core/layout/search/search";
import { figure } from "../../parts/figure";
import { layoutName } from "../layout-name";

const SIZE = { width: 380, height: 230 };
const PLOT = { left: 52, right: 370, top: 12, bottom: 190 };
const HIGHEST_SC = 5;
/** More points than this hide one another. */
const MOST_POINTS = 600;

interface Point {
  candidate: Candidate;
  coefficient: number;
  cost: number;
}

function pointsOf(candidates: readonly Candidate[], basis: LayoutBasis): Point[] {
  return candidates
    .flatMap((candidate) => {
      const coefficient = layoutMultiplier(candidate.judgement, basis);
      const cost = candidate.yearlyCost;
      if (coefficient === DRY_SPOTS || cost === DRY_SPOTS || coefficient > HIGHEST_SC) return [];
      return [{ candidate, coefficient, cost }];
    })
    .slice(0, MOST_POINTS);
}

interface Props {
  within: readonly Candidate[];
  outside: readonly Candidate[];
  basis: LayoutBasis;
  open: (candidate: Candidate) => void;
}

/** Yearly cost against SC: a filled circle keeps every limit, a hollow square breaks one; each opens its plan. */
export function CostChart({ within, outside, basis, open }: Props) {
  const kept = pointsOf(within, basis);
  const broken = pointsOf(outside, basis);
  const all = [...kept, ...broken];
  if (all.length === 0) return null;
  const coefficients = all.map((point) => point.coefficient);
  const [left, right] = [1, Math.max(1.1, ...coefficients)];
  const top = Math.max(...all.map((point) => point.cost)) || 1;
  const x = (coefficient: number) => PLOT.left + ((coefficient - left) / (right - left)) * (PLOT.right - PLOT.left);
  const y = (cost: number) => PLOT.bottom - (cost / top) * (PLOT.bottom - PLOT.top);
  const mark = ({ candidate, coefficient, cost }: Point, keeps: boolean, index: number) => {
    const words = `${candidate.head}, ${layoutName(candidate.plan)}: SC ${figure(coefficient)}, ${figure(cost)} a year${keeps ? "" : ", outside a limit"}`;
    const common = {
      fill: keeps ? "var(--colorBrandForeground1)" : "none",
      stroke: keeps ? "var(--colorBrandForeground1)" : "var(--colorNeutralForeground3)",
      strokeWidth: 1.2,
      style: { cursor: "pointer" },
      onClick: () => open(candidate),
    };
    return (
      <g key={`${keeps} ${index}`}>
        <title>{words}</title>
        {keeps ? (
          <circle cx={x(coefficient)} cy={y(cost)} r="4.5" {...common} />
        ) : (
          <rect x={x(coefficient) - 3} y={y(cost) - 3} width="6" height="6" {...common} />
        )}
      </g>
    );
  };
  const scale = [0, 0.5, 1];
  return (
    <figure className="chart">
      <figcaption className="note">
        Cost a year, water and capital, against SC. Filled circles keep every limit, hollow squares break one. A click
        opens the plan; the table below does the same by keyboard.
      </figcaption>
      <svg
        viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
        width="100%"
        role="img"
        aria-label={`${kept.length} layouts within all limits and ${broken.length} outside one`}
        fontSize="11"
      >
        <path
          d={`M${PLOT.left},${PLOT.top}V${PLOT.bottom}H${PLOT.right}`}
          fill="none"
          stroke="var(--colorNeutralForeground2)"
        />
        <g fill="var(--colorNeutralForeground1)">
          {scale.map((part) => (
            <text key={part} x={x(left + part * (right - left))} y={PLOT.bottom + 16} textAnchor="middle">
              {figure(left + part * (right - left))}
            </text>
          ))}
          {scale.map((part) => (
            <text key={part} x={PLOT.left - 6} y={y(part * top) + 4} textAnchor="end">
              {Math.round(part * top)}
            </text>
          ))}
          <text x={(PLOT.left + PLOT.right) / 2} y={PLOT.bottom + 32} textAnchor="middle">
            {basis === "driest" ? "SC, driest cell" : "SC, low quarter"}
          </text>
        </g>
        {broken.map((point, index) => mark(point, false, index))}
        {kept.map((point, index) => mark(point, true, index))}
      </svg>
    </figure>
  );
}

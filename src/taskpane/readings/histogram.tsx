import { figure } from "../parts/figure";
import type { CatchClass } from "./classes";

const ROW_PX = 22;

/** ColorBrewer BrBG, dry to wet, by the middle of the class over the mean catch. */
const COLOURS: [number, string][] = [
  [0.7, "#8c510a"],
  [0.85, "#d8b365"],
  [0.95, "#f6e8c3"],
  [1.05, "#f5f5f5"],
  [1.15, "#c7eae5"],
  [1.3, "#5ab4ac"],
  [Infinity, "#01665e"],
];

function colour({ from, to }: CatchClass, mean: number): string {
  const ratio = (from + to) / 2 / mean;
  return COLOURS.find(([below]) => ratio < below)![1];
}

const span = ({ from, to }: CatchClass) => (from === to ? figure(from) : `${from} to ${to}`);
const cans = (count: number) => `${count} ${count === 1 ? "can" : "cans"}`;

/** How many cans caught how much: one bar a class, driest first, each with its limits and its count. */
export function Histogram({ classes, mean, unit }: { classes: CatchClass[]; mean: number; unit: string }) {
  const most = Math.max(...classes.map((each) => each.cans));
  const label = classes.map((each) => `${span(each)} ${unit}: ${cans(each.cans)}`).join("; ");
  return (
    <figure style={{ margin: "12px 0 0" }}>
      <figcaption className="note">
        Cans by catch [{unit}], driest first; mean {figure(mean)} {unit}
      </figcaption>
      <svg
        className="histogram"
        role="img"
        aria-label={`Cans by catch. ${label}`}
        width="100%"
        height={classes.length * ROW_PX + 4}
      >
        {classes.map((each, index) => {
          const width = (48 * each.cans) / most;
          const middle = index * ROW_PX + 15;
          return (
            <g key={each.from}>
              <text x="0" y={middle}>
                {span(each)}
              </text>
              <rect x="32%" y={index * ROW_PX + 2} width={`${width}%`} height={ROW_PX - 4} fill={colour(each, mean)} />
              <text x={`${33.5 + width}%`} y={middle}>
                {cans(each.cans)}
              </text>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}

import { type PointerEvent, useRef } from "react";
import { INK, type Plot } from "../map/picture/plot";
import type { Planned } from "./worker/messages";

/** Told the new sizes [m] while something is dragged. */
export interface Drag {
  bed: (width: number, length: number) => void;
  gaps: (spacing: number, rowSpacing: number) => void;
}

const STEP_M = 0.1;
const LEAST_M = 0.5;
const SIDE_PX = 12;

const snapped = (metres: number) => Number(Math.max(LEAST_M, Math.round(metres / STEP_M) * STEP_M).toFixed(1));

interface Start {
  /** Where the pointer went down, in the picture's own pixels. */
  x: number;
  y: number;
  /** Pixels a metre then: the picture is fitted anew while the bed grows. */
  scale: number;
  width: number;
  length: number;
}

function inPicture(event: PointerEvent<SVGElement>): { x: number; y: number } {
  const svg = event.currentTarget.ownerSVGElement!;
  const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM()!.inverse());
  return { x: point.x, y: point.y };
}

/** Squares to drag with the pointer: the bed's corner, and the second head of the plan; the fields do the same by keyboard. */
export function DragHandles({ planned, plot, drag }: { planned: Planned; plot: Plot; drag: Drag }) {
  const start = useRef<Start | null>(null);
  const { plan, coverage } = planned;
  const [first] = coverage.heads;
  const second = coverage.heads.find(({ x, y }) => x > first!.x && y > first!.y);

  const handle = (
    x: number,
    y: number,
    size: { width: number; length: number },
    told: (w: number, l: number) => void,
  ) => (
    <rect
      x={plot.x(x) - SIDE_PX / 2}
      y={plot.y(y) - SIDE_PX / 2}
      width={SIDE_PX}
      height={SIDE_PX}
      fill="#ffffff"
      stroke={INK}
      strokeWidth="1.5"
      style={{ cursor: "nwse-resize", touchAction: "none" }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        start.current = { ...inPicture(event), scale: plot.scale, ...size };
      }}
      onPointerMove={(event) => {
        const from = start.current;
        if (!from) return;
        const now = inPicture(event);
        told(snapped(from.width + (now.x - from.x) / from.scale), snapped(from.length + (now.y - from.y) / from.scale));
      }}
      onPointerUp={() => {
        start.current = null;
      }}
    />
  );

  return (
    <g className="handles">
      {handle(plan.width, plan.length, plan, drag.bed)}
      {second && handle(second.x, second.y, { width: second.x - first!.x, length: second.y - first!.y }, drag.gaps)}
    </g>
  );
}

import { clock } from "../../core/program/clock";
import { flowCurve } from "../../core/program/flow-curve";
import type { Program, Schedule } from "../../core/program/program";
import { spans } from "../../core/program/spans";

/** Colours of their own, so that a picture in the workbook looks as on the page. */
const LIGHT = {
  paper: "#ffffff",
  ink: "#1b1b1b",
  faint: "#c4c4c4",
  open: "#dcefed",
  bar: "#01665e",
  over: "#8c510a",
  flow: "#f6e8c3",
  line: "#543005",
};
const DARK: typeof LIGHT = {
  paper: "#1f1f1f",
  ink: "#f5f5f5",
  faint: "#5c5c5c",
  open: "#17403c",
  bar: "#5ab4ac",
  over: "#d8b365",
  flow: "#543005",
  line: "#f6e8c3",
};
const WIDTH = 480;
const LEFT = 92;
const RIGHT = WIDTH - 78;
const FLOW = { top: 22, bottom: 92 };
const ROWS_FROM = 112;
const ROW = 20;
const BAR = 12;
const LONGEST_NAME = 14;
const TITLE = 22;
const LONGEST_TITLE = 64;
const STEPS_MIN = [30, 60, 120, 180, 240];
const MOST_MARKS = 8;

interface Given {
  program: Program;
  schedule: Schedule;
  /** What the picture shows, in a sentence. */
  words: string;
  /** A line above it that says what it belongs to, where it is by itself. */
  title?: string;
  dark: boolean;
}

const cut = (words: string, longest: number) => (words.length > longest ? `${words.slice(0, longest - 1)}…` : words);

/** Whole hours that mark the time axis. */
function marks(from: number, to: number): number[] {
  const step = STEPS_MIN.find((each) => (to - from) / each <= MOST_MARKS) ?? STEPS_MIN.at(-1)!;
  const first = Math.ceil(from / step) * step;
  return Array.from({ length: Math.floor((to - first) / step) + 1 }, (_, index) => first + index * step);
}

/** The night as a picture: the flow with the pump's line, and one line of pulses for each block. */
export function NightChart({ program, schedule, words, title, dark }: Given) {
  const colours = dark ? DARK : LIGHT;
  const line = spans(program.windows);
  const ends = schedule.map(({ start, minutes }) => start + minutes);
  const from = line[0]!.start;
  const to = Math.max(line.at(-1)!.end, ...ends);
  const curve = flowCurve(program, schedule);
  const most = Math.max(program.pump, ...curve.map(({ flow }) => flow));
  const blocks = program.blocks.filter(({ name }) => schedule.some(({ block }) => block === name));
  const height = ROWS_FROM + blocks.length * ROW + 28;
  const bottom = ROWS_FROM + blocks.length * ROW;
  const above = title ? TITLE : 0;
  const x = (minute: number) => LEFT + ((minute - from) / (to - from)) * (RIGHT - LEFT);
  const y = (flow: number) => FLOW.bottom - (flow / most) * (FLOW.bottom - FLOW.top);
  const inHours = (start: number, end: number) => line.some((span) => start >= span.start && end <= span.end + 1e-6);
  const path = curve.map(({ minute, flow }) => `H${x(minute).toFixed(1)}V${y(flow).toFixed(1)}`).join("");
  const pump = Math.round(program.pump / 6) / 10;
  return (
    <svg
      viewBox={`0 ${-above} ${WIDTH} ${height + above}`}
      width="100%"
      role="img"
      aria-label={words}
      fontSize="11"
      fontFamily="sans-serif"
    >
      <rect y={-above} width={WIDTH} height={height + above} fill={colours.paper} />
      {title && (
        <text x="4" y={16 - above} fontSize="13" fontWeight="bold" fill={colours.ink}>
          {cut(title, LONGEST_TITLE)}
        </text>
      )}
      {line.map(({ start, end }) => (
        <rect
          key={start}
          x={x(start)}
          y={FLOW.top}
          width={x(end) - x(start)}
          height={bottom - FLOW.top}
          fill={colours.open}
        >
          <title>{`Water may run from ${clock(start)} to ${clock(end)}`}</title>
        </rect>
      ))}
      {marks(from, to).map((minute) => (
        <g key={minute}>
          <path d={`M${x(minute)},${FLOW.top}V${bottom}`} stroke={colours.faint} strokeWidth="0.6" />
          <text x={x(minute)} y={bottom + 15} textAnchor="middle" fill={colours.ink}>
            {clock(minute)}
          </text>
        </g>
      ))}
      <path d={`M${x(from)},${FLOW.bottom}${path}`} fill={colours.flow} stroke={colours.line} strokeWidth="1.4" />
      <path d={`M${LEFT},${y(program.pump)}H${RIGHT}`} stroke={colours.over} strokeWidth="1.6" strokeDasharray="6 4" />
      <text x={RIGHT} y={y(program.pump) - 5} textAnchor="end" fill={colours.ink}>
        {`pump ${pump} L/min`}
      </text>
      <text x="4" y={FLOW.top + 8} fill={colours.ink}>
        Flow
      </text>
      <text x="4" y={FLOW.top + 21} fill={colours.ink}>
        [L/min]
      </text>
      <text x={LEFT - 5} y={FLOW.bottom} textAnchor="end" fill={colours.ink}>
        0
      </text>
      {blocks.map((block, index) => {
        const runs = schedule.filter((run) => run.block === block.name);
        const first = runs[0]!.start;
        const last = Math.max(...runs.map(({ start, minutes }) => start + minutes));
        const top = ROWS_FROM + index * ROW;
        return (
          <g key={block.name}>
            <path d={`M0,${top}H${WIDTH}`} stroke={colours.faint} strokeWidth="0.6" />
            <text x="4" y={top + 14} fill={colours.ink}>
              {cut(block.name, LONGEST_NAME)}
            </text>
            {runs.map(({ pulse, start, minutes }) => {
              const inside = inHours(start, start + minutes);
              return (
                <rect
                  key={pulse}
                  x={x(start)}
                  y={top + (ROW - BAR) / 2}
                  width={Math.max(1.5, x(start + minutes) - x(start))}
                  height={BAR}
                  fill={inside ? colours.bar : colours.paper}
                  stroke={inside ? colours.bar : colours.over}
                  strokeWidth={inside ? 0 : 2}
                >
                  <title>{`${block.name}, pulse ${pulse}: ${clock(start)} to ${clock(start + minutes)}${inside ? "" : ", outside the hours"}`}</title>
                </rect>
              );
            })}
            <text x={RIGHT + 6} y={top + 14} fill={colours.ink}>
              {`${clock(first)}–${clock(last)}`}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

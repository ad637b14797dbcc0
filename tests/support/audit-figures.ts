import type { Entries } from "../../src/workbook/form/build";
import { normalDeviate, randomNumbers } from "./random";

export type Typed = number | "x" | "";

/** A generated audit: a grid of cans, and what else was typed. */
export interface GeneratedAudit {
  title: string;
  readings: Typed[][];
  across: number[];
  along: number[];
  width: number;
  length: number;
  entries: Entries;
}

interface Shape {
  title: string;
  columns: number;
  rows: number;
  even?: true;
  of?: (random: () => number, i: number, j: number) => Typed;
  more?: Entries;
}

const ordinary = (random: () => number): number => Math.round(10 * Math.max(1, 30 + 8 * normalDeviate(random))) / 10;

const SHAPES: Shape[] = [
  { title: "25 cans, uneven places", columns: 5, rows: 5 },
  { title: "25 cans, even places", columns: 5, rows: 5, even: true },
  { title: "16 cans", columns: 4, rows: 4 },
  { title: "24 cans", columns: 4, rows: 6, even: true },
  { title: "15 cans", columns: 3, rows: 5 },
  { title: "one column of 9 cans", columns: 1, rows: 9 },
  { title: "one row of 12 cans", columns: 12, rows: 1 },
  { title: "2 cans", columns: 2, rows: 1, even: true },
  { title: "3 cans", columns: 1, rows: 3 },
  { title: "600 cans", columns: 20, rows: 30 },
  { title: "600 cans, even places", columns: 20, rows: 30, even: true },
  { title: "equal cans", columns: 5, rows: 6, of: () => 21.3 },
  { title: "dry cans", columns: 6, rows: 5, of: (random, i, j) => (i === 0 && j < 3 ? 0 : ordinary(random)) },
  { title: "a dry quarter and more", columns: 6, rows: 4, of: (random, i) => (i < 2 ? 0 : ordinary(random)) },
  { title: "unread cans", columns: 6, rows: 6, of: (random) => (random() < 0.2 ? "x" : ordinary(random)) },
  { title: "blank cans", columns: 7, rows: 4, of: (random) => (random() < 0.2 ? "" : ordinary(random)) },
  { title: "many equal cans", columns: 6, rows: 7, of: (random) => 10 + Math.floor(4 * random()) },
  { title: "a dry long edge", columns: 5, rows: 8, of: (random, _, j) => (j === 0 ? 9 : ordinary(random)) },
  {
    title: "dry corners, to the low quarter",
    columns: 5,
    rows: 5,
    of: (random, i, j) => (i % 4 === 0 && j % 4 === 0 ? 12 : ordinary(random)),
    more: { Multiplier_Basis: "low quarter", Leaching_Fraction: 0.12, Leaching_Rule: "both", In_Bed_Share: 0.7 },
  },
  {
    title: "to a share of the pots, larger leaching, square pots",
    columns: 6,
    rows: 5,
    more: {
      Multiplier_Basis: "share of pots",
      Share_Wanted: 0.8,
      Leaching_Fraction: 0.3,
      Leaching_Rule: "larger",
      Pot_Shape: "square",
      Pot_Use_mL: 310,
      Pot_Top_mm: 180,
      Capture_Factor: 1.3,
      Depth_Typed_mm: "",
    },
  },
  { title: "readings with many digits", columns: 5, rows: 5, of: (random) => 10 + 20 * random() },
  { title: "cans of very different catch", columns: 4, rows: 7, of: (random) => 0.01 + 500 * random() ** 4 },
];

function places(random: () => number, count: number, side: number, even: boolean): number[] {
  if (even) return Array.from({ length: count }, (_, index) => (side * (index + 0.5)) / count);
  const steps = Array.from({ length: count + 1 }, () => 0.3 + random());
  const whole = steps.reduce((sum, step) => sum + step, 0);
  let place = 0;
  return steps.slice(0, count).map((step) => {
    place += (side * step) / whole;
    return Math.round(100 * place) / 100;
  });
}

/** Audits of every kind of grid; the same ones every time. */
export function generatedAudits(): GeneratedAudit[] {
  const random = randomNumbers(20261125);
  return SHAPES.map(({ title, columns, rows, even, of = ordinary, more }) => {
    const [width, length] = [4 + 1.5 * columns, 6 + 2 * rows];
    const across = places(random, columns, width, even ?? false);
    const along = places(random, rows, length, even ?? false);
    const readings = along.map((_, i) => across.map((_, j) => of(random, i, j)));
    const entries: Entries = {
      Bed_Width_m: width,
      Bed_Length_m: length,
      Bed_Bearing_deg: Math.round(360 * random()),
      Can_Mouth_mm: 104,
      Test_Minutes: 20,
      Cans_Across_m: [across],
      Cans_Along_m: along.map((place) => [place]),
      Cans_Readings: readings,
      Depth_Typed_mm: 6.5,
      Take_Up_mm: 3,
      Rest_min: 25,
      Water_Days: 280,
      Water_Price: 1.7,
      Run_Minutes_Now: 40,
      Runs_A_Year_Now: 290,
      Pump_kPa: 300,
      Pump_Efficiency: 0.5,
      Motor_Efficiency: 0.9,
      Power_Tariff: 0.3,
      After_SC: 1.1,
      Waters_To_Driest: "yes",
      ...more,
    };
    return { title, readings, across, along, width, length, entries };
  });
}

import type { ReactNode } from "react";
import { RATE_CLASSES, rateClass } from "../../../core/pattern/rate-classes";
import { INK } from "./plot";

const LINE_PX = 17;
export const LEGEND_HEIGHT = (RATE_CLASSES.length + 3) * LINE_PX + 8;

interface Props {
  rates: ArrayLike<number>;
  mean: number;
  top: number;
  /** What is counted: cans, cells of a computed bed, which are shown as a share alone, or nothing in a key of several. */
  of: "cans" | "cells" | "nothing";
  /** What the classes are of, and their ranges in words, where that is not the rate over the mean. */
  classes?: { heading: string; ranges: readonly string[] };
  /** What else the picture shows. */
  children: ReactNode;
}

function counts(rates: ArrayLike<number>, mean: number): number[] {
  const all = RATE_CLASSES.map(() => 0);
  for (let index = 0; index < rates.length; index += 1) all[rateClass(rates[index]!, mean).number - 1]! += 1;
  return all;
}

/** The seven classes with number, symbol, range and colour, and how many belong to each. */
export function Legend({ rates, mean, top, of, classes, children }: Props) {
  const numbers = counts(rates, mean);
  const y = (line: number) => top + line * LINE_PX + 12;
  const heading = (x: number, words: string, anchor: "start" | "end") => (
    <text x={x} y={y(0)} textAnchor={anchor} fontWeight="600">
      {words}
    </text>
  );
  return (
    <g fill={INK}>
      {heading(40, classes?.heading ?? "Rate over the mean", "start")}
      {of === "cans" && heading(300, "cans", "end")}
      {of !== "nothing" && heading(356, of === "cans" ? "of them" : "share of bed", "end")}
      {RATE_CLASSES.map(({ number, symbol, range, colour }, index) => (
        <g key={number}>
          <rect x="40" y={y(index + 1) - 10} width="20" height="12" fill={colour} stroke={INK} strokeWidth="0.8" />
          <text x="68" y={y(index + 1)}>
            {number}
          </text>
          <text x="84" y={y(index + 1)}>
            {symbol}
          </text>
          <text x="128" y={y(index + 1)}>
            {classes?.ranges[index] ?? range}
          </text>
          {of === "cans" && (
            <text x="300" y={y(index + 1)} textAnchor="end">
              {numbers[index]}
            </text>
          )}
          {of !== "nothing" && (
            <text x="356" y={y(index + 1)} textAnchor="end">
              {Math.round((100 * numbers[index]!) / rates.length)} %
            </text>
          )}
        </g>
      ))}
      <text x="40" y={y(RATE_CLASSES.length + 1)} fontSize="10">
        {children}
      </text>
    </g>
  );
}

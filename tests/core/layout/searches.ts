import { namedProfile } from "../../../src/core/layout/profile";
import type { SearchInput } from "../../../src/core/layout/search/input";

/** Two invented heads, nine pairs of spacings and four arrangements on a bed of 8 x 12 m. */
export function searchOf(changes: Partial<SearchInput> = {}): SearchInput {
  return {
    width: 8,
    length: 12,
    cell: 0.5,
    heads: [
      { name: "example head A", profile: namedProfile("triangular", 4, 400), price: 6 },
      { name: "example head B", profile: namedProfile("ring", 5, 650), price: 8 },
    ],
    spacings: [2, 4, 8],
    rowSpacings: [3, 4, 6],
    stands: [
      { arrangement: "border", arcs: "full" },
      { arrangement: "border", arcs: "matched" },
      { arrangement: "inset", arcs: "full" },
      { arrangement: "centre", arcs: "full" },
    ],
    riserPrice: 4,
    pipePrice: 2.5,
    waterPrice: 3,
    life: 10,
    discountRate: 0.06,
    depth: 6,
    days: 300,
    basis: "driest",
    limits: {},
    ...changes,
  };
}

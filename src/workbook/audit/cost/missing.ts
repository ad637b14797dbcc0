import { nestedIfs } from "../../form/nested-ifs";
import { BETWEEN, DRAINED, ENERGY, FERTILISER, HOURS, PLANTS, WATER } from "./amounts";
import { type CostKind, OTHERS, POWER_PRICES, type Span, STEPS_FLAT, workingColumn } from "./places";

const isNo = (formula: string) => `NOT(ISNUMBER(${formula}))`;
/** True where a number is under 0, or something else is there. */
const bad = (formula: string) => `IF(ISNUMBER(${formula}),${formula}<0,TRUE)`;
/** True where a price is under 0, not above 0 where it must be, or where a low or high one is no price. */
const noPrice = (row: number, under = "<0") =>
  `OR(IF(ISNUMBER(F${row}),F${row}${under},TRUE),${["E", "G"].map((column) => `IF(ISNUMBER(${column}${row}),${column}${row}${under},${column}${row}<>"")`).join(",")})`;

const BED_WATER = { Now: "Needed_Now_Bed_kL", After: "Needed_After_Bed_kL" };
const [FERTILISER_ROW, WAGE_ROW, PLANT_ROW] = [OTHERS + 1, OTHERS + 2, OTHERS + 3];

/** Why a cost cannot be given; "" where it can. */
export function lackOf(kind: CostKind, span: Span): string {
  const water = [isNo(WATER(span)), WATER(span)] as const;
  switch (kind) {
    case "Water":
      return nestedIfs(
        [
          water,
          ['Steps_Problem<>""', "Steps_Problem"],
          [
            `AND(Steps_In_Use=0,COUNT(E${STEPS_FLAT}:G${STEPS_FLAT})<3)`,
            `IF(ISNUMBER(F${STEPS_FLAT}),"needs a price of 0 or more",F${STEPS_FLAT})`,
          ],
        ],
        '""',
      );
    case "Power": {
      const prices = `${workingColumn(span)}${POWER_PRICES}`;
      return nestedIfs(
        [
          water,
          [isNo(ENERGY(span)), `IF(ISTEXT(${ENERGY(span)}),${ENERGY(span)},"needs the energy")`],
          [`${ENERGY(span)}<0`, '"needs energy of 0 or more"'],
          [isNo(prices), prices],
        ],
        '""',
      );
    }
    case "Fertiliser":
      return nestedIfs(
        [
          [isNo(BED_WATER[span]), BED_WATER[span]],
          [isNo(DRAINED(span)), DRAINED(span)],
          [bad(FERTILISER(span)), '"needs mg/L of 0 or more"'],
          [`N(Fertiliser_Water_mgL)<0`, '"needs mg/L of 0 or more"'],
          [`AND(N(Fertiliser_Water_mgL)>0,${isNo(BETWEEN(span))})`, BETWEEN(span)],
          [noPrice(FERTILISER_ROW, "<=0"), '"needs the price of fertiliser, above 0"'],
        ],
        '""',
      );
    case "Labour":
      return nestedIfs(
        [
          [bad(HOURS(span)), '"needs hours of 0 or more"'],
          [noPrice(WAGE_ROW), '"needs the price of an hour"'],
        ],
        '""',
      );
    case "Losses":
      return nestedIfs(
        [
          [bad(PLANTS(span)), '"needs how many, 0 or more"'],
          [noPrice(PLANT_ROW), '"needs what a plant is worth"'],
        ],
        '""',
      );
  }
}

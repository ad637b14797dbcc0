import { positive } from "../core/checks";
import { canAreas as areasOfCans } from "../core/pattern/can-areas";
import { answer } from "./answer";
import { plain } from "./cells";
import { placesIn } from "./places";

/**
 * Area that each can is for [m²], from half-way lines to its neighbours and the bed's edges: rows along the length, columns across the width.
 * @customfunction CAN.AREAS
 * @helpurl https://localhost:3000/help.html#can-areas
 * @param across Places of the columns of cans [m from the left edge], one row or column, ascending
 * @param along Places of the rows of cans [m from the top edge], one row or column, ascending
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @returns Areas [m²]
 */
export function canAreas(across: unknown[][], along: unknown[][], width: unknown, length: unknown): number[][] {
  return answer(() => {
    const sides = [positive("width", plain(width), "m"), positive("length", plain(length), "m")] as const;
    return areasOfCans(placesIn("across", across, sides[0]), placesIn("along", along, sides[1]), sides[0], sides[1]);
  });
}

import { depthOfMillilitre } from "../../form/millilitres";
/**
 * The rate [mm/h] of a can elsewhere, as the pane paints it into the source block: live, so that a corrected reading
 * recolours.
 *
 * @param can The can's cell
 * @param minutes Length of the test [min]: a number or a cell
 * @param mouth The can's mouth [mm], a number or a cell; null for readings in mm
 */
export function paintedRate(can: string, minutes: string, mouth: string | null): string {
  const depth = mouth === null ? "" : `*${depthOfMillilitre(`${mouth}`)}`;
  return `IF(ISNUMBER(${can}),${can}${depth}*60/${minutes},IF(TRIM(${can})="x","x",""))`;
}

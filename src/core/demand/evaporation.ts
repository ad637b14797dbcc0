import { within } from "../checks";

/**
 * Water that an energy can evaporate.
 *
 *     E = 0.408 R        R: energy; 0.408: the inverse of the latent heat, 2.45 MJ/kg
 *
 * @param energy Energy [MJ/m2/day], from -200 to 200
 * @returns E [mm/day]; under 0 where heat is given up
 * @throws InputError if the energy is out of its range
 * @source FAO-56 (1998), eq. 20
 * @example evaporation(10) // 4.08
 */
export function evaporation(energy: number): number {
  return 0.408 * within("energy", energy, -200, 200, "MJ/m²/day"); // eq. 20
}

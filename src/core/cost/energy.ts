import { aboveZero, positive, upTo, zeroOrMore } from "../checks";

const KILOJOULES_A_KWH = 3600;

/**
 * Energy that pumping takes.
 *
 *     E = P / 3600 / (ep em)        P: pumping pressure [kPa], lift included; ep, em: efficiency of pump and of motor
 *
 * 1 kPa on 1 kL is 1 kJ; 1 kWh is 3600 kJ.
 *
 * @param pressure Pressure that the pump makes, heads, friction and lift together [kPa], more than 0
 * @param pump Efficiency of the pump, more than 0 and at most 1
 * @param motor Efficiency of motor and drive, more than 0 and at most 1
 * @returns E [kWh per kL], more than 0
 * @throws InputError if a value is out of its range
 * @source NGIQ, technical pages on pumping energy; work is pressure times volume
 * @example pumpingEnergy(360, 0.5, 1) // 0.2
 */
export function pumpingEnergy(pressure: number, pump: number, motor: number): number {
  const efficiency = upTo("pump_efficiency", pump, 1) * upTo("motor_efficiency", motor, 1);
  return positive("pressure", pressure, "kPa") / KILOJOULES_A_KWH / efficiency;
}

/**
 * Cost of the power that pumping takes, at one price.
 *
 *     C = V E p        V: water; E: energy of a kL; p: price of a kWh
 *
 * @param water Water [kL], 0 or more
 * @param energy Energy [kWh per kL], more than 0
 * @param price Price [currency per kWh], 0 or more
 * @returns Cost [currency]; 0 where water flows by itself or power is free
 * @throws InputError if a value is out of its range
 * @source arithmetic
 * @example powerCost(1000, 0.2, 0.3) // 60
 */
export function powerCost(water: number, energy: number, price: number): number {
  const used = zeroOrMore("water", water, "kL") * aboveZero("energy", energy, "kWh/kL");
  return used * zeroOrMore("price", price, "per kWh");
}

import { aboveZero } from "../checks";
import { elevationOf } from "./weather";

/**
 * Air pressure at a height.
 *
 *     P = 101.3 ((293 - 0.0065 z) / 293)^5.26        z: height above the sea [m]
 *
 * @param elevation Height above the sea [m], from -500 to 6000
 * @returns P [kPa]; 101.3 at the sea
 * @throws InputError if the elevation is out of its range
 * @source FAO-56 (1998), eq. 7
 * @example airPressure(1000) // 90.0
 */
export function airPressure(elevation: number): number {
  return 101.3 * ((293 - 0.0065 * elevationOf(elevation)) / 293) ** 5.26; // eq. 7
}

/**
 * Psychrometric constant.
 *
 *     gamma = 0.000665 P        P: air pressure [kPa]
 *
 * @param pressure Air pressure [kPa], more than 0
 * @returns gamma [kPa/°C], more than 0
 * @throws InputError if the pressure is not more than 0
 * @source FAO-56 (1998), eq. 8
 * @example psychrometricConstant(101.3) // 0.0674
 */
export function psychrometricConstant(pressure: number): number {
  return 0.665e-3 * aboveZero("pressure", pressure, "kPa"); // eq. 8
}

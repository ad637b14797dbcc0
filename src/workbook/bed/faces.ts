/** Which way a part circle faces, in words as typed, and as an angle [deg]: 0 towards the right, 90 the bottom. */
export const FACES = {
  right: 0,
  "bottom right": 45,
  bottom: 90,
  "bottom left": 135,
  left: 180,
  "top left": 225,
  top: 270,
  "top right": 315,
} as const;

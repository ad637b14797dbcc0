import { type Case, column } from "./data-check-cases";

export const HEAD_CASES: readonly Case[] = [
  {
    title: "heads farther apart than twice the throw",
    typed: { Head_Spacing_m: 4, Row_Spacing_m: 8.5, Head_Throw_m: 4 },
    said: [
      [
        "Heads",
        "Throw and spacing",
        "Heads are 8.5 m apart, over twice the throw of 4 m: the circles of neighbours do not meet. Are both right?",
      ],
    ],
  },
  {
    title: "a head with half a place",
    typed: { Head_Across_m: column(0, 3, 6), Head_Along_m: column(0, "", 0) },
    said: [["Heads", "Places of heads", "Head 2 has only one of across and along: type both, or neither."]],
  },
  {
    title: "a part circle without a way that it faces, and none where there is no head",
    typed: { Head_Arc_deg: column(0, 90, 180), Head_Faces: column("", "bottom right", "") },
    said: [["Heads", "Places of heads", "Head 3 throws a part circle: choose which way it faces."]],
  },
  {
    title: "pressure that differs and falls, three buckets, one of them low, and a meter that was still",
    typed: {
      // mean of both readings: 225, 202.5, 180, 157.5, 135; (225 - 135) / 180 = 50 %; 160 / 200 = -20 %
      Pressure_Before_kPa: column(250, 225, 200, 175, 150),
      Pressure_After_kPa: column(200, 180, 160, 140, 120),
      // 1000, 1000 and 700 mL in 30 s: 700 / 900 = 78 % of the mean
      Bucket_mL: column(1000, 1000, 700, "", ""),
      Meter_Stop_kL: 4812.31,
    },
    said: [
      [
        "Heads",
        "Pressure",
        "Range of pressure 50 %, over 20 (a limit from memory): larger pipe, a loop, or fewer heads on the valve.",
      ],
      [
        "Heads",
        "Before and after",
        "Mean pressure changed by -20 % during the test: find out why, and test again when it is steady.",
      ],
      ["Heads", "Buckets", "Only 3 flows: measure four to six heads, the first and the last among them."],
      [
        "Heads",
        "Flow from head to head",
        "Lowest flow, at highest, is 78 % of the mean: blocked or stopped? Clean or replace.",
      ],
      ["Heads", "Meter", "The meter did not move: check both readings."],
    ],
  },
  {
    title: "worn heads, the first one most",
    typed: {
      // 1600 and four times 1300 mL in 30 s: mean 1360 mL, 163.2 L/h; 1600 / 1360 = 118 %
      // to expect at 198.1 kPa: 125 · √(198.1 / 200) = 124.4 L/h; 163.2 / 124.4 = 131 %; 20 heads in 15 min: 816 L
      Bucket_mL: column(1600, 1300, 1300, 1300, 1300),
    },
    said: [
      [
        "Heads",
        "Flow from head to head",
        "Highest flow, at first on the line, is 118 % of the mean: worn, or another nozzle? Replace.",
      ],
      [
        "Heads",
        "Flow against the maker's",
        "Mean flow is 131 % of the flow to expect: worn nozzles? Replace the whole set.",
      ],
      ["Heads", "Meter", "Metered 655 L, but the heads gave 816 L: leaks, other outlets, beds on the valve?"],
    ],
  },
  {
    title: "flows that all are low and differ a little",
    typed: {
      // 940, 970, 1000, 1030 and 1060 mL in 36 s: mean 100 L/h; (1060 - 940) / 1000 = 12 %; 100 / 124.4 = 80 %
      Bucket_mL: column(940, 970, 1000, 1030, 1060),
      Bucket_s: column(36, 36, 36, 36, 36),
    },
    said: [
      [
        "Heads",
        "Flow from head to head",
        "Range of flow 12 %, over 10 (a limit from memory): even out the pressure, or look for mixed nozzles.",
      ],
      [
        "Heads",
        "Flow against the maker's",
        "Mean flow is 80 % of the flow to expect: filter, blocked nozzles, or other nozzles than written.",
      ],
    ],
  },
];

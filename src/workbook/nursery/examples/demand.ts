import type { Entries } from "../../form/build";

const GROUPS: Entries = {
  Demand_Groups: [["tubes 50", "herbs 140", "shrubs 190", "natives 200", "trees 400"]],
  Demand_Tops_mm: [[50, 140, 190, 200, 400]],
  Demand_Shapes: [["square", "round", "round", "round", "round"]],
  Demand_Captures: [["", 1.1, 1.5, 1.3, 1.8]],
  Demand_Coefficients: [[1.1, 1.3, 1.15, 0.9, 0.85]],
  Demand_Areas_m2: [[0.0025, 0.0154, 0.0576, 0.0625, 0.36]],
  Demand_Take_Up_mm: [[3, 5, 4, 5, 8]],
  Demand_Notes: [["area: pot's top", "area: pot's top", "area: the ground", "area: the ground", "area: canopy"]],
};

/** Tmin, Tmax, RHmin, RHmax, wind, sun, ET0 typed, rain, useful share; an invented southern year. */
const WEATHER: Entries = {
  Weather_Typed: [
    [20.8, 29.6, 58, 88, 2.4, 8.1, "", 140, 0.4],
    [20.7, 29.3, 60, 90, 2.3, 7.6, "", 150, 0.4],
    [19.2, 28.4, 57, 90, 2.1, 7.9, "", 110, 0.4],
    [16.3, 26.4, 52, 89, 1.8, 7.9, "", 70, 0.45],
    [13, 23.7, "", "", "", "", "", 65, 0.45],
    [10.6, 21.3, 48, 88, 1.6, 6.9, "", 60, 0.45],
    [9.2, 21, 43, 85, 1.6, 7.8, "", 35, 0.5],
    [9.9, 22.4, 39, 83, 1.8, 8.9, "", 35, 0.5],
    [12.8, 24.9, 42, 82, 2, 9, "", 30, 0.5],
    [15.8, 26.4, 48, 82, 2.3, 8.6, "", 80, 0.45],
    [18.1, 27.9, 52, 83, 2.4, 8.6, "", 95, 0.4],
    [19.7, 29.2, 55, 85, 2.5, 8.4, 6.1, 120, 0.4],
  ],
};

const SHRUBS = "shrubs 190";
const HERBS = "herbs 140";
const TREES = "trees 400";

const WEIGHINGS: Entries = {
  Weighings_Typed: [
    [SHRUBS, 7, 4120, 3925, 24],
    [SHRUBS, 7, 4065, 3840, 24],
    [SHRUBS, 7, 4210, 4002, 24],
    [SHRUBS, 7, 3980, 3791, 24],
    [SHRUBS, 7, 4155, 3916, 24],
    [SHRUBS, 7, 4090, 3882, 24],
    [SHRUBS, 11, 4240, 3832, 24],
    [SHRUBS, 11, 4105, 3724, 24],
    [SHRUBS, 11, 4180, 3761, 24],
    [SHRUBS, 11, 4075, 3689, 24],
    [SHRUBS, 11, 4130, 3721, 24],
    [SHRUBS, 11, 4165, 3768, 24],
    [HERBS, 7, 1242, 1190, 23.5],
    [HERBS, 7, 1256, 1208, 23.5],
    [HERBS, 7, 1229, 1171, 23.5],
    [HERBS, 7, 1261, 1206, 23.5],
    [HERBS, 7, 1238, 1187, 23.5],
    [TREES, 7, 21450, 20610, 25],
    [TREES, 7, 22100, 21180, 25],
    [TREES, 7, 21720, 20890, 25],
  ],
};

const LEACHING: Entries = {
  Leaching_Block: "block 9, 12 November (invented)",
  Leaching_Run_min: 95,
  Leaching_Before_g: 4120,
  Leaching_After_g: 4640,
  Leaching_Poured_g: 4510,
  Leaching_Target: 0.1,
};

/** What is typed into the demand sheets of the example plan. */
export const DEMAND_EXAMPLE: Entries = { ...GROUPS, ...WEATHER, ...WEIGHINGS, ...LEACHING };

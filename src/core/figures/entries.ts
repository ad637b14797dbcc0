import { type Entry, entry } from "./entry";

const MONEY_MOST = 1e9;
const PRICE_MOST = 1e6;
const HOURS_A_YEAR = 8784;

/** What an audit asks in numbers, by the defined name of its cell. */
export const ENTRIES = {
  Bed_Width_m: entry("Width", "bed width", "m", [0.3, 500]),
  Bed_Length_m: entry("Length", "bed length", "m", [0.3, 500]),
  Test_Minutes: entry("Length of the test", "minutes", "min", [0.1, 1440]),
  Can_Mouth_mm: entry("Can mouth, inside", "mouth", "mm", [10, 1000]),
  Pot_Use_mL: entry("Water that one pot uses", "water use", "mL a day", [0, 1e6]),
  Capture_Factor: entry("Capture factor", "capture factor", "", [0.01, 20], "ratio"),
  Depth_Typed_mm: entry("Or the depth, typed", "depth", "mm a day", [0.01, 1000]),
  Share_Wanted: entry("Share of pots to water fully", "share", "", [0.5, 1], "0.5 to 1"),
  Leaching_Fraction: entry("Leaching fraction wanted", "leaching fraction", "", [0, 0.9], "0 to 0.9"),
  Take_Up_mm: entry("Depth per pulse", "depth per pulse", "mm", [0.1, 1000]),
  Rest_min: entry("Rest between pulses", "rest", "min", [0, 1440]),
  Water_Days: entry("Watering days", "days", "days a year", [0.01, 366]),
  Water_Price: entry("Price of water, likely", "price", "per kL", [0, PRICE_MOST]),
  Water_Price_Low: entry("Price of water, low", "price", "per kL", [0, PRICE_MOST]),
  Water_Price_High: entry("Price of water, high", "price", "per kL", [0, PRICE_MOST]),
  In_Bed_Share: entry("Share of the heads' water in the bed", "share in the bed", "", [0.01, 1], "0 to 1"),
  After_In_Bed_Share: entry("Share in the bed after", "share in the bed", "", [0.01, 1], "0 to 1"),
  Pump_kPa: entry("Pumping pressure", "pressure", "kPa", [0, 10_000]),
  Pump_Efficiency: entry("Efficiency of the pump", "efficiency", "", [0.01, 1], "0 to 1"),
  Motor_Efficiency: entry("Efficiency of the motor", "efficiency", "", [0.01, 1], "0 to 1"),
  After_MAR: entry("MAR after", "MAR", "mm/h", [0.01, 1000]),
  Power_Tariff: entry("Tariff of power", "tariff", "per kWh", [0, PRICE_MOST]),
  Fertiliser_mgL: entry("Fertiliser in what drains", "fertiliser", "mg/L", [0, 1e6]),
  Fertiliser_Water_mgL: entry("Fertiliser in the irrigation water", "fertiliser", "mg/L", [0, 1e6]),
  Fertiliser_Price: entry("Price of fertiliser", "price", "per kg", [0, PRICE_MOST]),
  Labour_Hours: entry("Work on this watering", "hours", "h a year", [0, HOURS_A_YEAR]),
  After_Labour_Hours: entry("Work on this watering after", "hours", "h a year", [0, HOURS_A_YEAR]),
  Wage: entry("Price of an hour", "price", "per h", [0, PRICE_MOST]),
  Plants_Lost: entry("Plants lost or marked down", "plants", "plants a year", [0, MONEY_MOST]),
  After_Plants_Lost: entry("Plants lost after", "plants", "plants a year", [0, MONEY_MOST]),
  Plant_Worth: entry("What a plant is worth", "worth", "", [0, PRICE_MOST], "each"),
  After_SC: entry("SC after", "SC", "", [1, 1000], "ratio"),
  After_Capital: entry("What the change costs", "cost", "", [0, MONEY_MOST], "once"),
  Upgrade_Labour: entry("Own labour on top", "labour", "", [0, MONEY_MOST], "once"),
  Upgrade_Grant: entry("Grant", "grant", "", [0, MONEY_MOST], "once"),
  Upgrade_Life_years: entry("Years of life", "life", "years", [0.1, 1000]),
  Upgrade_Rate: entry("Discount rate", "discount rate", "", [0, 1], "0 to 1"),
} as const satisfies Record<string, Entry>;

/** What the pane calls some of them, where no sheet is beside it. */
export const ASKED_FIRST = {
  Can_Mouth_mm: { ...ENTRIES.Can_Mouth_mm, label: "Can mouth, inside diameter" },
  Depth_Typed_mm: { ...ENTRIES.Depth_Typed_mm, label: "Net depth wanted in each pot" },
  Pot_Use_mL: { ...ENTRIES.Pot_Use_mL, label: "Or the water that one pot uses" },
} as const satisfies Partial<Record<keyof typeof ENTRIES, Entry>>;

/** What the nursery plan asks of a group of pots. */
export const GROUP_ENTRIES = {
  Demand_Tops_mm: entry("Pot's top, inside", "pot top", "mm", [10, 3000]),
  Demand_Captures: entry("Capture factor", "capture factor", "", [0.01, 20]),
  Demand_Coefficients: entry("Coefficient", "coefficient", "", [0.01, 20]),
  Demand_Areas_m2: entry("Area per pot that the coefficient refers to", "area", "m²", [0.0001, 100]),
  Demand_Take_Up_mm: entry("Depth per pulse", "depth per pulse", "mm", [0.1, 1000]),
} as const satisfies Record<string, Entry>;

export type EntryName = keyof typeof ENTRIES;

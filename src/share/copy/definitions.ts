/** A measure of an audit: its names in the workbook and what it means. */
export interface Definition {
  label: string;
  /** What it is, in words and symbols. */
  meaning: string;
  source: string;
  /** Defined names of its value with each can alike, of the one that is put first, and of its limit's text and source. */
  result: string;
  used: string;
  limit?: { text: string; source: string };
}

const limit = (short: string) => ({ text: `Limit_${short}_Text`, source: `Limit_${short}_Source` });

/** The measures that an audit states, in the order of its results. */
export const DEFINITIONS: readonly Definition[] = [
  {
    label: "Mean application rate [mm/h]",
    meaning: "mean depth of all cans read, over the length of the test; depth = 1000 mL / (pi mouth² / 4)",
    source: "common practice",
    result: "Result_MAR",
    used: "Used_MAR",
    limit: limit("MAR"),
  },
  {
    label: "CU (Christiansen) [%]",
    meaning: "100 (1 − sum of the deviations from the mean, each without its sign, over the sum of all readings)",
    source: "Christiansen, Irrigation by sprinkling, 1942",
    result: "Result_CU",
    used: "Used_CU",
    limit: limit("CU"),
  },
  {
    label: "DU (low quarter) [%]",
    meaning:
      "100 times the mean of the lowest quarter of the cans (n/4 to the nearest whole, halves up) over the mean of all",
    source: "Merriam and Keller, Farm irrigation system evaluation, 1978",
    result: "Result_DU_Quarter",
    used: "Used_DU",
    limit: limit("DU"),
  },
  {
    label: "SC (driest can)",
    meaning: "mean of all cans over the lowest reading; it rises with the number of cans",
    source: "common practice",
    result: "Result_SC_Can",
    used: "Used_SC_Can",
    limit: limit("SC"),
  },
  {
    label: "SC (low quarter)",
    meaning: "mean of all cans over the mean of the lowest quarter of the cans",
    source: "common practice",
    result: "Result_SC_Quarter",
    used: "Used_SC_Quarter",
    limit: limit("SCQ"),
  },
  {
    label: "SC (share of pots)",
    meaning: "mean of all cans over the reading that the wanted share of the cans reaches",
    source: "common practice",
    result: "Result_SC_Share",
    used: "Used_SC_Share",
  },
];

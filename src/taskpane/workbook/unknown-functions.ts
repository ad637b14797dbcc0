import type { Host } from "../../hosts/host";

/** Why the functions of Canfall show #NAME? although its pane is there, and what to do. */
export const unknownFunctions = ({ label }: Host): string =>
  `${label} has not loaded Canfall's functions. Save this workbook, open it again and press Open Canfall; ` +
  "if they still show #NAME?, open Canfall's page in a browser and press Check this host";

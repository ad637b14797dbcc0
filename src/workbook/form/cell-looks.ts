import type { Font, Style } from "@cj-tech-master/excelts";
import type { Kind } from "./sheet-spec";

const fill = (colour: string): Style["fill"] => ({
  type: "pattern",
  pattern: "solid",
  fgColor: { argb: `FF${colour.slice(1).toUpperCase()}` },
});
const ink = (colour: string) => ({ argb: `FF${colour.slice(1).toUpperCase()}` });
const font = (look: Partial<Font>): Partial<Font> => ({ name: "Calibri", size: 11, ...look });
const line = { style: "thin", color: ink("#8c6d2f") } as const;
const faint = { style: "hair", color: ink("#9a9a9a") } as const;
const white = { style: "thin", color: ink("#ffffff") } as const;
const pale = { style: "hair", color: ink("#c8c8c8") } as const;
const box = (edge: typeof line | typeof faint) => ({ top: edge, left: edge, bottom: edge, right: edge });

interface Look extends Partial<Style> {
  open?: true;
}

/** The looks of the workbook: what is typed in is cream with a brown edge, answers are pale green. */
const LOOKS: Record<Kind, Look> = {
  title: { font: font({ bold: true, size: 16, color: ink("#543005") }) },
  said: { font: font({ italic: true, color: ink("#5a4a33") }), alignment: { wrapText: true, vertical: "top" } },
  heading: {
    font: font({ bold: true, color: ink("#3b2206") }),
    fill: fill("#dfc27d"),
    alignment: { wrapText: true, vertical: "middle" },
  },
  label: { font: font({}), alignment: { wrapText: true, vertical: "middle" } },
  input: {
    font: font({}),
    fill: fill("#fbf4e2"),
    border: box(line),
    alignment: { horizontal: "left", wrapText: true, vertical: "middle" },
    open: true,
  },
  reading: {
    font: font({}),
    fill: fill("#fbf4e2"),
    border: box(line),
    alignment: { horizontal: "center", shrinkToFit: true },
    open: true,
  },
  answer: {
    font: font({ bold: true }),
    fill: fill("#e6f4f2"),
    border: box(faint),
    alignment: { horizontal: "left", wrapText: true, vertical: "middle" },
  },
  working: { font: font({}), border: box(faint), alignment: { horizontal: "right" } },
  unit: { font: font({ color: ink("#5a4a33") }), alignment: { horizontal: "left", indent: 1, vertical: "middle" } },
  note: {
    font: font({ size: 9, color: ink("#5a4a33") }),
    alignment: { horizontal: "left", indent: 1, wrapText: true, vertical: "middle" },
  },
  rate: {
    font: font({ size: 8 }),
    border: { top: white, left: white, right: white },
    alignment: { horizontal: "center", vertical: "middle", shrinkToFit: true },
  },
  symbol: {
    font: font({ size: 7, bold: true }),
    border: { bottom: white, left: white, right: white },
    alignment: { horizontal: "center", vertical: "middle", shrinkToFit: true },
  },
  tile: {
    font: font({ size: 8, bold: true }),
    alignment: { horizontal: "center", vertical: "middle", shrinkToFit: true },
  },
  entry: {
    font: font({ size: 9 }),
    border: { bottom: pale },
    alignment: { horizontal: "left", wrapText: true, vertical: "middle" },
  },
  signature: { font: font({}), border: { bottom: faint }, alignment: { vertical: "bottom" } },
  caution: {
    font: font({ bold: true, color: ink("#543005") }),
    border: { left: { style: "thick", color: ink("#8c510a") } },
    alignment: { wrapText: true, vertical: "top" },
  },
};

/** The style of a kind; what is typed in, or kept by the pane, is not locked. */
export function lookOfKind(kind: Kind, kept = false): Partial<Style> {
  const { open, ...style } = LOOKS[kind];
  return { ...style, protection: { locked: !(open || kept) } };
}

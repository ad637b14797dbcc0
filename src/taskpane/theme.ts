import { type BrandVariants, createDarkTheme, createLightTheme, type Theme } from "@fluentui/react-components";

const WATER: BrandVariants = {
  10: "#01110f",
  20: "#042320",
  30: "#06332f",
  40: "#07423d",
  50: "#07514b",
  60: "#06615a",
  70: "#03655d",
  80: "#01665e",
  90: "#1f7b73",
  100: "#358f86",
  110: "#4ba39a",
  120: "#5ab4ac",
  130: "#7cc5be",
  140: "#9dd6d0",
  150: "#c7eae5",
  160: "#e6f6f4",
};

/** The desk carries a font of the name Calibri, so that the pane is as wide on every machine. */
const fontFamilyBase = '"Segoe UI", Calibri, sans-serif';

const LIGHT: Theme = { ...createLightTheme(WATER), fontFamilyBase };

const DARK: Theme = {
  ...createDarkTheme(WATER),
  fontFamilyBase,
  colorBrandForeground1: WATER[130],
  colorBrandForegroundLink: WATER[130],
  colorCompoundBrandForeground1: WATER[130],
};

export function theme(dark: boolean): Theme {
  return dark ? DARK : LIGHT;
}

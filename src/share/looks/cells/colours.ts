import type { XmlElement } from "../../../xlsx/parts/xml-tree";
import { within } from "../../../xlsx/parts/xml-tree";

/** The 64 colours that a number names where a file lists none of its own (ECMA-376 part 1, 18.8.27). */
const INDEXED =
  "000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff 000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff 800000 008000 000080 808000 800080 008080 c0c0c0 808080 9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc ccccff 000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff 00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99 3366ff 33cccc 99cc00 ffcc00 ff9900 ff6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333".split(
    " ",
  );
const SYSTEM_INK = 64;
const SYSTEM_PAPER = 65;
const THEME_ORDER = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];

/** What a machine's own colours are unless somebody changed them. */
const SYSTEM_COLOURS: Readonly<Record<string, string>> = { window: "ffffff", windowText: "000000" };

/** The colours of a theme in the order in which styles number them, as `rrggbb`. */
export function themeColours(theme: XmlElement | null): string[] {
  const all = theme ? [...within(theme)] : [];
  const scheme = all.find(({ name }) => name === "clrScheme");
  return THEME_ORDER.map((wanted) => {
    const given = scheme?.children.find(({ name }) => name === wanted)?.children[0]?.given;
    const system = SYSTEM_COLOURS[given?.get("val") ?? ""];
    return (system ?? given?.get("lastClr") ?? given?.get("val") ?? "000000").toLowerCase();
  });
}

export const channels = (colour: string) => [0, 2, 4].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
const hex = (values: readonly number[]) =>
  values
    .map((value) =>
      Math.round(Math.min(255, Math.max(0, value)))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("");

/** A colour made lighter or darker (18.8.19), near enough to tell whether it can be read. */
function tinted(colour: string, tint: number): string {
  if (tint === 0) return colour;
  return hex(channels(colour).map((value) => (tint < 0 ? value * (1 + tint) : value + (255 - value) * tint)));
}

/** The colour of an element of a style as `rrggbb`; `automatic` where it names none. */
export function colourOf(
  element: XmlElement | undefined,
  theme: readonly string[],
  indexed: readonly string[],
  automatic: string,
): string {
  const given = element?.given;
  if (!given || given.get("auto") === "1") return automatic;
  const tint = Number(given.get("tint") ?? 0) || 0;
  const rgb = given.get("rgb");
  if (rgb) return tinted(rgb.slice(-6).toLowerCase(), tint);
  if (given.has("theme")) return tinted(theme[Number(given.get("theme"))] ?? automatic, tint);
  const index = Number(given.get("indexed") ?? -1);
  if (index === SYSTEM_INK) return "000000";
  if (index === SYSTEM_PAPER) return "ffffff";
  return index >= 0 ? (indexed[index] ?? INDEXED[index] ?? automatic) : automatic;
}

const linear = (value: number) => (value <= 10.314 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4);

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = channels(colour).map(linear);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * Contrast of two colours, 1 for the same to 21 for black on white.
 *
 * @source WCAG 2.2, relative luminance and contrast ratio
 */
export function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

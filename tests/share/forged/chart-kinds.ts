import type { Forgery } from "./kinds";

const CHART = "xl/charts/chart1.xml";
const layout = (inside: Readonly<Record<string, string | number>>) =>
  `<c:layout><c:manualLayout>${Object.entries(inside)
    .map(([name, val]) => `<c:${name} val="${val}"/>`)
    .join("")}</c:manualLayout></c:layout>`;
const EDGE = { xMode: "edge", yMode: "edge" };
const FIRST_COLOUR = '<a:srgbClr val="003C30"/>';
const changed = (change: string) => `<a:srgbClr val="003C30"><a:${change}/></a:srgbClr>`;
const WORDS = '<a:rPr sz="1200" b="1"/>';
const coloured = (colour: string) => `<a:rPr sz="1200" b="1"><a:solidFill>${colour}</a:solidFill></a:rPr>`;
const VALUES = /(<c:valAx>.*?<c:axPos val="l"\/>)/;
const format = (code: string) => `$1<c:numFmt formatCode="${code}" sourceLinked="0"/>`;

const KINDS: readonly (readonly [string, string | RegExp, string])[] = [
  [
    "what a chart draws made tiny in it",
    "<c:plotArea>",
    `<c:plotArea>${layout({ ...EDGE, x: 0.4, y: 0.4, w: 0.05, h: 0.05 })}`,
  ],
  [
    "what a chart draws made tiny, by its far edges",
    "<c:plotArea>",
    `<c:plotArea>${layout({ ...EDGE, wMode: "edge", hMode: "edge", x: 0.4, y: 0.4, w: 0.45, h: 0.8 })}`,
  ],
  [
    "what a chart draws laid out of it",
    "<c:plotArea>",
    `<c:plotArea>${layout({ ...EDGE, x: 0.9, y: 0.1, w: 0.8, h: 0.6 })}`,
  ],
  [
    "a title of a chart laid out of it",
    '<c:overlay val="0"/></c:title>',
    `${layout({ ...EDGE, x: 1.5, y: 0 })}<c:overlay val="0"/></c:title>`,
  ],
  [
    "a title of a chart moved out of it",
    '<c:overlay val="0"/></c:title>',
    `${layout({ x: 0, y: -0.4 })}<c:overlay val="0"/></c:title>`,
  ],
  [
    "the key of a chart laid out of it",
    '<c:legendPos val="b"/>',
    `<c:legendPos val="b"/>${layout({ ...EDGE, x: 0.1, y: 1.4, w: 0.8, h: 0.1 })}`,
  ],
  [
    "the key of a chart too small for its words",
    '<c:legendPos val="b"/>',
    `<c:legendPos val="b"/>${layout({ ...EDGE, x: 0.1, y: 0.9, w: 0.01, h: 0.01 })}`,
  ],
  ["the key of a chart over what it draws", /<c:overlay val="0"\/><\/c:legend>/, '<c:overlay val="1"/></c:legend>'],
  ["a series of a chart made darker", FIRST_COLOUR, changed('lumMod val="20000"')],
  ["a series of a chart made lighter", FIRST_COLOUR, changed('lumOff val="80000"')],
  ["a series of a chart seen through", FIRST_COLOUR, changed('alpha val="5000"')],
  ["a series of a chart tinted", FIRST_COLOUR, changed('tint val="10000"')],
  ["a series of a chart shaded", FIRST_COLOUR, changed('shade val="10000"')],
  ["words of a chart made white", WORDS, coloured('<a:srgbClr val="000000"><a:lumOff val="100000"/></a:srgbClr>')],
  ["words of a chart seen through", WORDS, coloured('<a:srgbClr val="000000"><a:alpha val="3000"/></a:srgbClr>')],
  ["words of a chart in the theme's white", WORDS, coloured('<a:schemeClr val="bg1"/>')],
  ["words of a chart in the system's white", WORDS, coloured('<a:sysClr val="window" lastClr="FFFFFF"/>')],
  ["words of a chart without a colour", WORDS, '<a:rPr sz="1200" b="1"><a:noFill/></a:rPr>'],
  [
    "a chart on the theme's black",
    "</c:plotArea>",
    '<c:spPr><a:solidFill><a:schemeClr val="tx1"/></a:solidFill></c:spPr></c:plotArea>',
  ],
  ["words of a chart upside down", "<a:bodyPr/>", '<a:bodyPr rot="10800000"/>'],
  ["words of a chart one letter upon another", "<a:bodyPr/>", '<a:bodyPr vert="wordArtVert"/>'],
  ["columns of a chart as thin as a hair", '<c:gapWidth val="150"/>', '<c:gapWidth val="500"/>'],
  ["stacked columns that do not lie upon each other", '<c:overlap val="100"/>', '<c:overlap val="0"/>'],
  ["a chart that lies on its side", '<c:barDir val="col"/>', '<c:barDir val="bar"/>'],
  ["numbers written on a chart", "<c:gapWidth", '<c:dLbls><c:showVal val="1"/></c:dLbls><c:gapWidth'],
  ["an axis of a chart without its numbers", VALUES, '$1<c:tickLblPos val="none"/>'],
  ["an axis of a chart with one number", /(<c:crossBetween [^>]*>)/, '$1<c:majorUnit val="1000000"/>'],
  ["an axis of a chart in reverse", /(<c:valAx>.*?<c:orientation val=")minMax/, "$1maxMin"],
  ["an axis of a chart from another number", /(<c:valAx>.*?<c:scaling>)/, '$1<c:min val="100"/>'],
  ["axes of a chart that cross elsewhere", /(<c:valAx>.*?<c:crosses val=")autoZero/, "$1max"],
  ["numbers of an axis with a further nought", VALUES, format("0\\0")],
  ["numbers of an axis in thousands by their format", VALUES, format("#,##0,")],
  ["numbers of an axis as a share", VALUES, format("0%")],
  ["numbers of an axis with words", VALUES, format("0&quot; saved&quot;")],
];

/** Charts that draw the right cells in a way that misleads. */
export const CHART_KINDS: readonly Forgery[] = KINDS.map(([kind, from, to]) => ({
  kind,
  make: (file) => file.change(CHART, from, to),
}));

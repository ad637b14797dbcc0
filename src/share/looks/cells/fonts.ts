/** Fonts whose letters look like letters, as spreadsheet programs offer them; any other may show other signs. */
const TEXT_FONTS =
  /^(calibri|carlito|aptos|arial|liberation|helvetica|cambria|caladea|times|courier|consolas|segoe ui|tahoma|verdana|georgia|trebuchet|noto s|noto mono|dejavu|roboto|open sans|lato|inter|ubuntu|cantarell|candara|corbel|constantia|franklin|century|garamond|book antiqua|palatino|gill sans|san francisco|menlo|monaco|geneva|lucida|microsoft sans|ms sans|ms p?gothic|ms p?mincho|yu gothic|meiryo|simsun|nsimsun|simhei|microsoft yahei|malgun|gulim|dotum|pmingliu|microsoft jhenghei|sans|serif|system)/i;
/** Fonts of signs, those whose lines are far taller than their letters, and lists of several fonts. */
export const NOT_LETTERS = /symbol|dings|emoji|icon|barcode|marlett|math|[;,]/i;

/** Whether the letters of a font may look like other signs. */
export const isStrange = (font: string) => NOT_LETTERS.test(font) || !TEXT_FONTS.test(font.trim());

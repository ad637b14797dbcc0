const TAG = /\[\$[^\]-]*-([^\]]*)\]/g;
/** Languages whose days and digits are written as in English, by their codes and by the low bits of their numbers. */
const LANGUAGES: Readonly<Record<string, number>> = {
  en: 0x09,
  de: 0x07,
  fr: 0x0c,
  nl: 0x13,
  es: 0x0a,
  it: 0x10,
  pt: 0x16,
  sv: 0x1d,
  da: 0x06,
  nb: 0x14,
  fi: 0x0b,
  pl: 0x15,
  cs: 0x05,
};
const NAMED = /^([a-z]{2})(-[a-z]{2})?$/i;
const NUMBERED = /^0*[0-9a-f]{1,4}$/i;
const LOW_BITS = 0x3ff;

function isKnown(tag: string): boolean {
  const name = NAMED.exec(tag)?.[1]?.toLowerCase();
  if (name !== undefined) return name in LANGUAGES;
  return NUMBERED.test(tag) && Object.values(LANGUAGES).includes(Number.parseInt(tag, 16) & LOW_BITS);
}

/** Whether a number format names a language by which a program may show other digits, another calendar or its own form. */
export const namesLanguage = (format: string): boolean =>
  [...format.replace(/"[^"]*"/g, "").matchAll(TAG)].some(([, tag = ""]) => !isKnown(tag));

const QUOTED = /"(?:[^"]|"")*"|'(?:[^']|'')*'/g;
const GIVING = /(?<![\w.])(LET|LAMBDA)\(/gi;
const NAME = /^[\p{L}_][\p{L}\p{N}_.]*$/u;

/** The arguments of a call whose bracket opens before `from`, as far as they are closed. */
function argumentsAt(formula: string, from: number): string[] {
  const found: string[] = [];
  let depth = 0;
  let start = from;
  for (let i = from; i < formula.length; i += 1) {
    const sign = formula[i]!;
    if ("({".includes(sign)) depth += 1;
    const closes = depth === 0 && sign === ")";
    if (closes || (depth === 0 && sign === ",")) {
      found.push(formula.slice(start, i).trim());
      start = i + 1;
    }
    if (closes) return found;
    if (")}".includes(sign)) depth -= 1;
  }
  return found;
}

/** The names that the LET and LAMBDA of a formula give, in small letters. */
function parametersOf(formula: string): Set<string> {
  const names = new Set<string>();
  const plain = formula.replace(QUOTED, (quoted) => "_".repeat(quoted.length));
  for (const call of plain.matchAll(GIVING)) {
    const given = argumentsAt(plain, call.index + call[0].length).slice(0, -1);
    const step = call[1]!.toUpperCase() === "LET" ? 2 : 1;
    given.forEach((one, i) => {
      if (i % step === 0 && NAME.test(one)) names.add(one.toLowerCase());
    });
  }
  return names;
}

/** A formula in which the names that LET and LAMBDA give have the prefix that files put before them. */
export function withParameters(formula: string): string {
  if (!/\b(LET|LAMBDA)\(/i.test(formula)) return formula;
  const names = parametersOf(formula);
  return formula.replace(
    /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\p{L}\p{N}_.!])[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.!])/gu,
    (part) => (names.has(part.toLowerCase()) ? `_xlpm.${part}` : part),
  );
}

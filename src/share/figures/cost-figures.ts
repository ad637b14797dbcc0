import type { Stated } from "../../cells/stated";
import { annuity } from "../../core/cost/annuity";
import { netPresentValue, payingWaterPrice, simplePayback, type Upgrade, upgradeCost } from "../../core/cost/upgrade";
import type { Range } from "../../core/cost/yearly-cost";
import { KINDS, LEVELS, type Level, SPANS, type Span } from "../../workbook/audit/cost/places";
import { type AuditInputs, ifAll } from "./audit-inputs";
import type { BedCans } from "./bed-cans";
import type { RunTimeFigures } from "./run-time-figures";
import type { WaterFigures } from "./water-figures";
import { type YearCosts, yearCosts } from "./yearly-costs";

const LEAST_RATE = 0.001;

type Years = Record<Span, YearCosts>;
const keyOf = (level: Level) => level.toLowerCase() as keyof Range<number>;
const sum = (all: readonly (number | null)[]): number | null => {
  const known = all.filter((one) => one !== null);
  return known.length === 0 ? null : known.reduce((one, other) => one + other, 0);
};

/** The sum of the kinds that can be given now; after, of the same ones, all of which it needs. */
function total(years: Years, span: Span, level: keyof Range<number>): number | null {
  const counted = KINDS.filter((kind) => years.Now[kind]).map((kind) => years[span][kind]?.[level] ?? null);
  return counted.includes(null) ? null : sum(counted);
}

/** What was bought, where it can be told. */
function capitalOf(inputs: AuditInputs): number | null {
  const actions = inputs
    .cells("Actions_Table")
    .flatMap(({ column, cell: { value } }) => (column === 5 && typeof value === "number" ? [value] : []));
  const spent = sum(actions) ?? 0;
  const parts = inputs.number("After_Capital") ?? (spent > 0 ? spent : null);
  const labour = inputs.number("Upgrade_Labour");
  if (parts === null && labour === null) return null;
  const grant = inputs.number("Upgrade_Grant") ?? 0;
  return ifAll([parts ?? 0, labour ?? 0, grant], (bought, own, given) =>
    upgradeCost({ parts: bought, labour: own, grant: given, life: 1, discountRate: 0 }),
  );
}

/** Life and discount rate, where both can be used. */
function termsOf(inputs: AuditInputs): Pick<Upgrade, "life" | "discountRate"> | null {
  const [life, discountRate] = [inputs.number("Upgrade_Life_years"), inputs.number("Upgrade_Rate")];
  if (life === null || discountRate === null || (discountRate !== 0 && discountRate < LEAST_RATE)) return null;
  return ifAll([life, discountRate], (years, rate) => annuity(1, years, rate)) === null ? null : { life, discountRate };
}

function savedFigures(inputs: AuditInputs, years: Years, water: WaterFigures, level: Level): [string, number | null][] {
  const at = keyOf(level);
  const saved = KINDS.map((kind) => {
    if (water.saved === null && kind !== "Labour" && kind !== "Losses") return null;
    return ifAll([years.Now[kind]?.[at] ?? null, years.After[kind]?.[at] ?? null], (now, after) => now - after);
  });
  const asked = inputs.text("Waters_To_Driest");
  const all = ifAll([total(years, "Now", at), total(years, "After", at)], (now, after) => now - after);
  const together = asked === "yes" ? all : asked === "no" ? sum(saved.slice(3)) : null;
  const [capital, terms] = [capitalOf(inputs), termsOf(inputs)];
  const upgrade = capital === null ? null : { parts: capital, labour: 0, grant: 0, life: 1, discountRate: 0, ...terms };
  const where = (all: readonly (number | null)[], work: (upgrade: Upgrade) => number) =>
    upgrade && ifAll(all, () => work(upgrade));
  return [
    ...KINDS.map((kind, index): [string, number | null] => [`Saved_${kind}_${level}`, saved[index]!]),
    [`Saved_${level}`, together],
    [`Payback_${level}`, where([together], (what) => simplePayback(what, together!))],
    [`NPV_${level}`, terms && where([together], (what) => netPresentValue(what, together!))],
    [
      `Paying_Price_${level}`,
      terms && where([water.saved], (what) => payingWaterPrice(what, water.saved!, sum(saved.slice(1)) ?? 0)),
    ],
  ];
}

/** The costs of an audit now and after, what is saved, and whether the change pays, by the names of the cells. */
export function costFigures(
  inputs: AuditInputs,
  run: RunTimeFigures,
  water: WaterFigures,
  cans: BedCans,
): Map<string, Stated> {
  const years = {
    Now: yearCosts(inputs, run, water, cans, "Now"),
    After: yearCosts(inputs, run, water, cans, "After"),
  };
  const figures = new Map<string, Stated>([["Upgrade_Capital", capitalOf(inputs)]]);
  for (const level of LEVELS) {
    for (const span of SPANS) {
      for (const kind of KINDS) figures.set(`Cost_${kind}_${span}_${level}`, years[span][kind]?.[keyOf(level)] ?? null);
      figures.set(`Cost_Total_${span}_${level}`, total(years, span, keyOf(level)));
    }
    for (const [name, value] of savedFigures(inputs, years, water, level)) figures.set(name, value);
  }
  return figures;
}

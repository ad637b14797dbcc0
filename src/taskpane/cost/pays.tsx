import { PAYING } from "../../core/figures/costs";
import { type NamedCells, numberIn, textIn } from "../workbook/named";
import { type Levels, money, paysOf, rangeWords, savedOf } from "./read-costs";

const years = (value: number) => value.toFixed(1);

/** From the least to the most, whichever prices give it; "" where they give one. */
function spanWords({ low, high, likely }: Levels, shown: (value: number) => string, unit: string): string {
  if (low === undefined || high === undefined || shown(low) === shown(high)) return "";
  const prices = low < high ? "from the low to the high prices" : "from the high to the low prices";
  return ` (${rangeWords({ low: Math.min(low, high), likely, high: Math.max(low, high) }, shown)}${unit}, ${prices})`;
}

function Line({
  label,
  value,
  shown,
  unit = "",
}: {
  label: string;
  value: Levels;
  shown: (value: number) => string;
  unit?: string;
}) {
  if (value.likely === undefined) return null;
  return (
    <p>
      {label}{" "}
      <strong>
        {shown(value.likely)}
        {unit}
      </strong>
      {spanWords(value, shown, unit)}
    </p>
  );
}

/** Why there is no payback, in words; "" where there is one. */
function lack(found: NamedCells): string {
  const saved = savedOf(found, "Total").likely;
  if (saved === undefined) return "";
  if (numberIn(found.Upgrade_Capital) === undefined) return "Payback needs what the change costs";
  if (saved <= 0) return "It never pays back: nothing is saved a year";
  const worth = textIn(found.Upgrade_Worth);
  return numberIn(found.Upgrade_Worth) === undefined ? `${PAYING.NPV.name} ${worth}` : "";
}

/** What is saved, and when a change pays. */
export function Pays({ found }: { found: NamedCells }) {
  const price = paysOf(found, "Paying_Price");
  const worth = paysOf(found, "NPV");
  const free = price.likely !== undefined && price.likely <= 0;
  return (
    <div className="driest" role="status">
      <Line label="Saved a year" value={savedOf(found, "Total")} shown={money} />
      <p>{textIn(found.Saved_Why)}</p>
      <Line label={PAYING.Payback.short} value={paysOf(found, "Payback")} shown={years} unit=" years" />
      <Line label={PAYING.NPV.name} value={worth} shown={money} />
      {worth.likely !== undefined && (
        <p className="note">What the savings of the change's life are worth today, less what the change costs.</p>
      )}
      {free ? (
        <p>It pays even where water is free.</p>
      ) : (
        <Line label={PAYING.Paying_Price.name} value={price} shown={money} unit=" per kL" />
      )}
      {lack(found) && <p>{lack(found)}.</p>}
    </div>
  );
}

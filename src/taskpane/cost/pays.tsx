import { figure } from "../figure";
import { type NamedCells, numberIn, textIn } from "../named";
import { type Levels, money, paysOf, rangeWords, savedOf } from "./read-costs";

const years = (value: number) => `${figure(value)} years`;

function Line({ label, value, shown }: { label: string; value: Levels; shown: (value: number) => string }) {
  if (value.likely === undefined) return null;
  const range = rangeWords(value, shown);
  return (
    <p>
      {label} <strong>{shown(value.likely)}</strong>
      {range && ` (${range}, from the low to the high prices)`}
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
  return numberIn(found.Upgrade_Worth) === undefined ? `Net present value ${worth}` : "";
}

/** What is saved, and when a change pays. */
export function Pays({ found }: { found: NamedCells }) {
  const price = paysOf(found, "Paying_Price");
  const free = price.likely !== undefined && price.likely <= 0;
  return (
    <div className="driest" role="status">
      <Line label="Saved a year" value={savedOf(found, "Total")} shown={money} />
      <p>{textIn(found.Saved_Why)}</p>
      <Line label="Pays back in" value={paysOf(found, "Payback")} shown={years} />
      <Line label="Net present value" value={paysOf(found, "NPV")} shown={money} />
      {free ? (
        <p>It pays even where water is free.</p>
      ) : (
        <Line label="Pays from a water price of" value={price} shown={(value) => `${money(value)} per kL`} />
      )}
      {lack(found) && <p>{lack(found)}.</p>}
    </div>
  );
}

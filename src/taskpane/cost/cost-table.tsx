import { COSTS } from "../../core/figures/costs";
import { type NamedCells, textIn } from "../workbook/named";
import { costOf, KINDS, type KindKey, type Levels, money, rangeWords, savedOf } from "./read-costs";

function Money({ value }: { value: Levels }) {
  const range = rangeWords(value);
  return (
    <td className="right">
      {value.likely === undefined ? <span>–</span> : <span className="figure">{money(value.likely)}</span>}
      {range && <span className="detail">{range}</span>}
    </td>
  );
}

const ROWS: readonly KindKey[] = [...KINDS, "Total"];

/** Each kind of cost now and after, and what is saved of it. */
export function CostTable({ found }: { found: NamedCells }) {
  return (
    <table>
      <caption>
        Currency a year{textIn(found.Valve_Words) && `, ${textIn(found.Valve_Words)}`}, at the likely prices, and below
        it from the low to the high ones
      </caption>
      <thead>
        <tr>
          <th scope="col">Kind</th>
          <th scope="col" className="right">
            Now
          </th>
          <th scope="col" className="right">
            After
          </th>
          <th scope="col" className="right">
            Saved
          </th>
        </tr>
      </thead>
      <tbody>
        {ROWS.map((key) => (
          <tr key={key}>
            <th scope="row">{COSTS[key].name}</th>
            <Money value={costOf(found, key, "Now")} />
            <Money value={costOf(found, key, "After")} />
            <Money value={savedOf(found, key)} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

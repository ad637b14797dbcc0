import { Button, Input, Select } from "@fluentui/react-components";
import type { ShapeName } from "../../core/layout/profile";
import { SHAPE_WORDS } from "./layout-entries";
import type { HeadEntries } from "./search/entries";

const NEW: HeadEntries = { name: "", radius: "", flow: "", price: "", shape: "triangular" };
const COLUMNS: [keyof HeadEntries & ("name" | "radius" | "flow" | "price"), string][] = [
  ["name", "Head"],
  ["radius", "Throw [m]"],
  ["flow", "Flow [L/h]"],
  ["price", "Price each"],
];

/** The heads that may be bought. */
export function HeadList({ heads, change }: { heads: readonly HeadEntries[]; change: (heads: HeadEntries[]) => void }) {
  const put = (index: number, changed: Partial<HeadEntries>) =>
    change(heads.map((head, place) => (place === index ? { ...head, ...changed } : head)));
  return (
    <div className="wide">
      <table>
        <caption>Heads to try; the first ones are invented, type your supplier's over them</caption>
        <thead>
          <tr>
            {COLUMNS.map(([name, words]) => (
              <th key={name} scope="col">
                {words}
              </th>
            ))}
            <th scope="col">Rate against distance</th>
            <th scope="col">
              <span className="unseen">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {heads.map((head, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a head has no other identity than its place
            <tr key={index}>
              {COLUMNS.map(([name, words]) => (
                <td key={name}>
                  <Input
                    value={head[name]}
                    aria-label={`${words}, head ${index + 1}`}
                    autoComplete="off"
                    onChange={(_, { value }) => put(index, { [name]: value })}
                  />
                </td>
              ))}
              <td>
                <Select
                  value={head.shape}
                  aria-label={`Rate against distance, head ${index + 1}`}
                  onChange={(_, { value }) => put(index, { shape: value as ShapeName })}
                >
                  {(["triangular", "uniform", "ring"] as const).map((shape) => (
                    <option key={shape} value={shape} title={SHAPE_WORDS[shape]}>
                      {shape}
                    </option>
                  ))}
                </Select>
              </td>
              <td>
                <Button
                  aria-label={`Remove head ${index + 1}`}
                  onClick={() => change(heads.filter((_, place) => place !== index))}
                >
                  ×
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <Button onClick={() => change([...heads, NEW])}>Add a head</Button>
    </div>
  );
}

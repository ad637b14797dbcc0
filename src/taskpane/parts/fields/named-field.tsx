import { Field, Input } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { reference } from "../../../cells/box";
import type { Input as Typed } from "../../../cells/cell";
import type { Host } from "../../../hosts/host";
import type { Act } from "../../workbook/act";
import { type NamedCell, textIn } from "../../workbook/named";
import { writeAll } from "../../workbook/writes";
import { words } from "../task/words";

interface Props {
  host: Host;
  label: string;
  found: NamedCell;
  /** What to write for the text that was typed; throws what is wrong with it. */
  read: (text: string) => Typed;
  keep: (act: Act) => void;
}

/** A cell of the workbook as a field: it shows what is there, and writes what is typed once the field is left. */
export function NamedField({ host, label, found, read, keep }: Props) {
  const [text, setText] = useState<string | null>(null);
  /** What was written, until the workbook was read again. */
  const [sent, setSent] = useState<string | null>(null);
  const [problem, setProblem] = useState("");
  const shown = textIn(found);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each reading of the workbook makes another `found`
  useEffect(() => setSent(null), [found]);

  async function commit(): Promise<void> {
    if (text === null) return;
    try {
      const input = text.trim() === "" ? "" : read(text.trim());
      if (String(input) !== shown) {
        keep(await writeAll(host, [{ area: found.cell, inputs: [[input]] }], "entry"));
        setSent(text);
      }
      // what was typed while the spreadsheet took its time stays
      setText((now) => (now === text ? null : now));
    } catch (reason) {
      setProblem(words(reason));
    }
  }

  const place = found.formula
    ? `calculated by the workbook in ${reference(found.cell)}`
    : `kept in ${reference(found.cell)}`;
  return (
    <Field
      label={label}
      hint={problem ? null : place}
      validationState={problem ? "error" : "none"}
      validationMessage={problem || null}
    >
      <Input
        value={text ?? sent ?? shown}
        readOnly={found.formula}
        autoComplete="off"
        spellCheck={false}
        onChange={(_, { value }) => {
          setText(value);
          setProblem("");
        }}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === "Enter") void commit();
        }}
      />
    </Field>
  );
}

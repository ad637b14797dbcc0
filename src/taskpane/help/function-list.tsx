import { Field, SearchBox } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { EXAMPLES } from "../../functions/examples";
import { PLAIN_SEPARATORS, type Separators } from "../../hosts/host";
import { callOf, type FunctionInfo, fetchFunctions, matching } from "./function-info";
import { localised } from "./localised";

function Item({ info, separators }: { info: FunctionInfo; separators: Separators }) {
  return (
    <li>
      <h3>{`CANFALL.${info.name}`}</h3>
      <p>{info.description}</p>
      <details>
        <summary>Arguments and example of {info.name}</summary>
        <p>{localised(callOf(info), separators)}</p>
        <ul>
          {info.parameters.map(({ name, description, optional }) => (
            <li key={name}>
              <strong>{name}</strong>
              {optional && " (may be left out)"}: {description}
            </li>
          ))}
        </ul>
        {EXAMPLES[info.id] && <code>{localised(EXAMPLES[info.id]!, separators)}</code>}
      </details>
    </li>
  );
}

const SUGGESTION = "Try dry, evenness, how long, cost or water.";
const counted = (count: number) => (count === 1 ? "1 function" : `${count} functions`);

/** Every worksheet function, searchable by word; loads the list itself when none is given. */
export function FunctionList({
  functions,
  separators = PLAIN_SEPARATORS,
}: {
  functions?: FunctionInfo[] | undefined;
  separators?: Separators;
}) {
  const [loaded, setLoaded] = useState<FunctionInfo[]>([]);
  const [failure, setFailure] = useState("");
  const [search, setSearch] = useState("");

  useEffect(() => {
    if (functions) return;
    fetchFunctions().then(setLoaded, (reason: Error) => setFailure(reason.message));
  }, [functions]);

  const found = matching(functions ?? loaded, search);
  const none = search.trim() !== "" && found.length === 0;
  return (
    <section aria-labelledby="canfall-functions">
      <h2 id="canfall-functions">Functions</h2>
      <Field label="Search by word" style={{ marginTop: 8 }}>
        <SearchBox value={search} onChange={(_, { value }) => setSearch(value)} />
      </Field>
      <p role="status" className="note">
        {failure || (none ? `No function has “${search.trim()}”. ${SUGGESTION}` : counted(found.length))}
      </p>
      {separators.list !== "," && (
        <p className="note">
          Examples have {separators.list} between arguments and {separators.decimal} in numbers, as your spreadsheet
          does. Write IF in its language.
        </p>
      )}
      <ul className="functions">
        {found.map((info) => (
          <Item key={info.id} {...{ info, separators }} />
        ))}
      </ul>
    </section>
  );
}

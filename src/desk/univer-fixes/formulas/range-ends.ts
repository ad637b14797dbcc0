import { FormulaDependencyGenerator } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";
import type { Node } from "./formula-size";

/** The grid's own service that looks which ranges each formula reads. */
const looking = FormulaDependencyGenerator.prototype as unknown as {
  _nodeTraversalRef(node: Node, found: Node[]): void;
};

const REFERENCE = 1;
/** Such as A1:B2. */
const RANGE = 10;

/** Ranges with an end that a function gives. */
function open(node: Node): Node[] {
  const here = node.nodeType === RANGE && node.getChildren().some(({ nodeType }) => nodeType !== REFERENCE);
  return [...(here ? [node] : []), ...node.getChildren().flatMap(open)];
}

/** A formula with such a range reads what the function at its end reads, too. */
export const rangeEnds: Fix = {
  name: "range-ends",
  wrong:
    "A formula such as SUM(B2:INDEX(B2:B26,P2)) does not follow P2: the grid does not look into the function at the range's end.",
  seen: "0.25.1",
  members: () => [["FormulaDependencyGenerator", looking, "_nodeTraversalRef"]],
  mend() {
    const { _nodeTraversalRef } = looking;
    looking._nodeTraversalRef = function (node, found) {
      _nodeTraversalRef.call(this, node, found);
      for (const range of open(node))
        for (const end of range.getChildren()) if (end.nodeType !== REFERENCE) _nodeTraversalRef.call(this, end, found);
    };
  },
};

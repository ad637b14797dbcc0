import { CommandType, ICommandService, type IUnitRange } from "@univerjs/core";
import {
  FormulaDependencyGenerator,
  Interpreter,
  RichTextEditingMutation,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetRangeValuesMutation,
} from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";
import type { Node } from "./formula-size";

interface Given {
  node?: Node | null;
  refOffsetX: number;
  refOffsetY: number;
}

/** The grid's own service that looks which ranges each formula reads. */
interface Looking {
  _getRangeListByNode(given: Given): Promise<IUnitRange[]>;
  _nodeTraversalRef(node: Node, found: Node[]): void;
  _getAddressFunctionNodeList(node: Node | null): Node[];
  _detectForcedRecalculationNode(tree: object, node: Node | null): boolean;
  _runtimeService: { currentUnitId: string; currentSubUnitId: string };
}

/** What was found of a parsed formula. */
interface Found {
  plain?: boolean;
  addresses?: Node[];
  forced?: boolean;
  waits?: boolean;
  /** The ranges that it reads, by where it is, as of a number of changes. */
  ranges?: Map<string, IUnitRange[]>;
  asOf?: number;
}

const REFERENCE = 1;
/** Such as A1:B2. */
const RANGE = 10;
const work = Interpreter.prototype as unknown as { checkAsyncNode(node: Node | null): boolean };
const looking = FormulaDependencyGenerator.prototype as unknown as Looking;

/** Changes after which a reference still means the same cells. */
const CONTENT = new Set([
  SetRangeValuesMutation.id,
  SetArrayFormulaDataMutation.id,
  SetFormulaCalculationStartMutation.id,
  SetFormulaCalculationNotificationMutation.id,
  SetFormulaCalculationResultMutation.id,
  RichTextEditingMutation.id,
]);

/** Whether a reference means the same cells whatever is in them, other than A1:INDEX(A:A,B11). */
const isPlain = (node: Node): boolean =>
  node.nodeType === REFERENCE || (node.nodeType === RANGE && node.getChildren().every(isPlain));

/** Looks once at each formula, and at its ranges again only after a change that moves or names cells. */
export const parsedFormulas: Fix = {
  name: "parsed-formulas",
  wrong:
    "With every calculation the grid looks twice which ranges and functions each formula of the workbook has: of an entry's time a third.",
  seen: "0.25.1",
  members: () => [
    ["Interpreter", work, "checkAsyncNode"],
    ...[
      "_getRangeListByNode",
      "_nodeTraversalRef",
      "_getAddressFunctionNodeList",
      "_detectForcedRecalculationNode",
    ].map((name): [string, object, string] => ["FormulaDependencyGenerator", looking, name]),
  ],
  mend({ injector }) {
    const { _getRangeListByNode, _nodeTraversalRef, _getAddressFunctionNodeList } = looking;
    const { _detectForcedRecalculationNode } = looking;
    const { checkAsyncNode } = work;
    const known = new WeakMap<Node, Found>();
    let changes = 0;
    injector.get(ICommandService).onCommandExecuted(({ id, type }) => {
      if (type === CommandType.MUTATION && !CONTENT.has(id)) changes += 1;
    });
    const of = (node: Node): Found => {
      const found = known.get(node) ?? {};
      known.set(node, found);
      return found;
    };
    function readsPlainly(this: Looking, node: Node): boolean {
      const found: Node[] = [];
      _nodeTraversalRef.call(this, node, found);
      return found.every(isPlain);
    }
    looking._getRangeListByNode = async function (given) {
      const { node, refOffsetX, refOffsetY } = given;
      if (!node) return [];
      const found = of(node);
      found.plain ??= readsPlainly.call(this, node);
      if (!found.plain) return _getRangeListByNode.call(this, given);
      if (!found.ranges || found.asOf !== changes) found.ranges = new Map();
      found.asOf = changes;
      const { ranges } = found;
      const { currentUnitId, currentSubUnitId } = this._runtimeService;
      const place = `${currentUnitId} ${currentSubUnitId} ${refOffsetX} ${refOffsetY}`;
      const before = ranges.get(place);
      if (before) return before;
      const read = await _getRangeListByNode.call(this, given);
      ranges.set(place, read);
      return read;
    };
    looking._getAddressFunctionNodeList = function (node) {
      if (!node) return [];
      const found = of(node);
      found.addresses ??= _getAddressFunctionNodeList.call(this, node);
      return found.addresses;
    };
    looking._detectForcedRecalculationNode = function (tree, node) {
      if (!node) return false;
      const found = of(node);
      found.forced ??= _detectForcedRecalculationNode.call(this, tree, node);
      return found.forced;
    };
    work.checkAsyncNode = function (node) {
      if (!node) return false;
      const found = of(node);
      found.waits ??= checkAsyncNode.call(this, node);
      return found.waits;
    };
  },
};

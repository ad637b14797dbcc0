import type { Injector } from "@univerjs/core";
import {
  BaseFunction,
  type BaseValueObject,
  FunctionType,
  type FunctionVariantType,
  IFunctionService,
} from "@univerjs/preset-sheets-core";
import { type Blank, excelArguments } from "./arguments";
import { associated } from "./custom-functions";
import type { FunctionMetadata } from "./metadata";
import { guarded } from "./results";

const NAMESPACE = "CANFALL";
/** Functions of the grid that ask other machines, which no page of ours does. */
const REACHING_OUT = ["IMAGE"];

class DeskFunction extends BaseFunction {
  override needsReferenceObject = true;

  constructor(
    private readonly metadata: FunctionMetadata,
    private readonly work: (...given: unknown[]) => unknown,
    private readonly blank: Blank,
  ) {
    super(`${NAMESPACE}.${metadata.name}`);
    this.minParams = metadata.parameters.filter((parameter) => !parameter.optional).length;
    this.maxParams = metadata.parameters.length;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const passed = excelArguments(given as FunctionVariantType[], this.metadata.parameters, this.blank);
    return guarded(this.metadata.name, () => this.work(...passed));
  }
}

const described = (metadata: FunctionMetadata) => ({
  functionName: `${NAMESPACE}.${metadata.name}`,
  functionType: FunctionType.User,
  description: metadata.description,
  abstract: metadata.description,
  functionParameter: metadata.parameters.map((parameter) => ({
    name: parameter.name,
    detail: parameter.description,
    example: parameter.name,
    require: parameter.optional ? 0 : 1,
    repeat: 0,
  })),
});

/** Puts every function that the modules associated into the grid, under the name that Excel shows. */
export function registerFunctions(injector: Injector, known: FunctionMetadata[], blank: Blank): void {
  const service = injector.get(IFunctionService);
  for (const metadata of known) {
    const work = associated.get(metadata.id);
    if (!work) throw new Error(`function ${metadata.id} must be associated`);
    service.registerExecutors(new DeskFunction(metadata, work, blank));
  }
  service.unregisterExecutors(...REACHING_OUT);
  service.registerDescriptions(...known.map(described));
}

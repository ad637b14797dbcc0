import { type Member, Refusal } from "./fake-excel-objects";

interface ArgumentInfo {
  Arguments?: unknown[];
  ReferencedObjectPathIds?: number[];
}

interface ObjectPath {
  Id: number;
  ObjectPathType: number;
  Name: string;
  ParentObjectPathId: number;
  /** Of an object that was untracked. */
  D?: boolean;
  ArgumentInfo?: ArgumentInfo;
}

interface Action {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: ArgumentInfo;
  QueryInfo?: { Select?: string[] };
}

/** A request as Microsoft's client sends it in ProcessQuery. */
export interface Request {
  Actions: Action[];
  ObjectPaths: Record<string, ObjectPath>;
}

const ROOT = 1;
const NEW_OBJECT = 2;
const METHOD = 3;
const PROPERTY = 4;
const INDEXER = 5;
const REFERENCE = 6;

const INSTANTIATE = 1;
const QUERY = 2;
const CALL = 3;
const SET = 4;
const TRACE = 5;

type Method = (...parameters: unknown[]) => unknown;

/** Members are `values` in Office.js and `Values` in requests. */
const wire = (name: string): string => name[0]!.toUpperCase() + name.slice(1);
const own = (name: string): string => name[0]!.toLowerCase() + name.slice(1);

function selected(member: Member, select: string[]): Record<string, unknown> {
  const answer: Record<string, unknown> = {};
  for (const path of select) {
    const [name, ...rest] = path.split("/") as [string, ...string[]];
    if (!(name in member)) throw new Refusal("InvalidArgument", `The fake Excel knows no property ${path}.`);
    const value = member[name];
    answer[wire(name)] = rest.length > 0 ? selected(value as Member, [rest.join("/")]) : value;
  }
  return answer;
}

/** Keeps the objects that a client holds between requests. */
export class Server {
  readonly #references = new Map<string, Member>();
  #kept = 0;

  constructor(
    readonly root: Member,
    /** Objects outside the workbook, by their method: the results of custom functions come in there. */
    readonly services: Record<string, Method>,
  ) {}

  async answer(request: Request): Promise<unknown> {
    const found = new Map<number, Member | null>();
    const results: { ActionId: number; Value: unknown }[] = [];
    for (const [index, action] of request.Actions.entries()) {
      try {
        results.push({ ActionId: action.Id, Value: (await this.#act(request, action, found)) ?? null });
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        const { code: Code, message: Message } = error;
        return { Results: results, Error: { Code, Message, ActionIndex: index, HttpStatusCode: 400, Location: "" } };
      }
    }
    const traces = request.Actions.filter(({ ActionType }) => ActionType === TRACE);
    return { Results: results, TraceIds: traces.map(({ Id }) => Id) };
  }

  #parameters(request: Request, found: Map<number, Member | null>, info: ArgumentInfo | undefined): unknown[] {
    return (info?.Arguments ?? []).map((value, i) => {
      const path = info?.ReferencedObjectPathIds?.[i];
      return path ? this.#find(request, path, found) : value;
    });
  }

  #find(request: Request, id: number, found: Map<number, Member | null>): Member | null {
    if (!found.has(id)) found.set(id, this.#follow(request, request.ObjectPaths[id]!, found));
    return found.get(id)!;
  }

  #follow(request: Request, path: ObjectPath, found: Map<number, Member | null>): Member | null {
    if (path.ObjectPathType === ROOT) return this.root;
    if (path.ObjectPathType === NEW_OBJECT) return this.services as Member;
    if (path.ObjectPathType === REFERENCE) return this.#references.get(path.Name)!;
    const parent = this.#find(request, path.ParentObjectPathId, found);
    if (parent === null) return null;
    if (parent === (this.services as Member)) return parent;
    const parameters = this.#parameters(request, found, path.ArgumentInfo);
    const name = path.ObjectPathType === INDEXER ? "item" : own(path.Name);
    if (!(name in parent)) throw new Refusal("ApiNotFound", `The fake Excel knows no ${path.Name}.`);
    if (path.ObjectPathType === PROPERTY) return parent[name] as Member | null;
    if (path.ObjectPathType === METHOD || path.ObjectPathType === INDEXER) {
      return (parent[name] as Method)(...parameters) as Member | null;
    }
    throw new Error(`the fake Excel knows no object path of type ${path.ObjectPathType}`);
  }

  #act(request: Request, action: Action, found: Map<number, Member | null>): unknown {
    if (action.ActionType === TRACE) return null;
    const member = this.#find(request, action.ObjectPathId, found);
    if (member === null) return null;
    const untracked = request.ObjectPaths[action.ObjectPathId]!.D;
    if (action.ActionType === INSTANTIATE) return untracked ? {} : this.#identity(member);
    if (action.ActionType === QUERY) {
      const select = action.QueryInfo?.Select ?? [];
      return member.items ? { _Items: member.items().map((item) => selected(item, select)) } : selected(member, select);
    }
    const parameters = this.#parameters(request, found, action.ArgumentInfo);
    if (action.Name === "_RemoveReference") return void this.#references.delete(String(parameters[0]));
    if (action.ActionType === SET) {
      member[own(action.Name)] = parameters[0];
      return null;
    }
    if (action.ActionType !== CALL) throw new Error(`the fake Excel knows no action of type ${action.ActionType}`);
    if (!(own(action.Name) in member)) throw new Refusal("ApiNotFound", `The fake Excel knows no ${action.Name}.`);
    return (member[own(action.Name)] as Method)(...parameters);
  }

  #identity(member: Member): unknown {
    if (member.kind !== "range") return {};
    this.#kept += 1;
    const reference = String(this.#kept);
    this.#references.set(reference, member);
    return { _ReferenceId: reference };
  }
}

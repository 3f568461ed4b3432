import type { Node } from "./objects.js";
import { Refusal } from "./sheet.js";

type ObjectPath = {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: Arguments;
};
type Arguments = { readonly Arguments?: readonly unknown[]; readonly ReferencedObjectPathIds?: readonly number[] };
type Action = {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Arguments;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
};

/** A request as Microsoft's proxies send it. Their private form: it holds for the pinned version. */
export type Message = {
  readonly Body: { readonly Actions: readonly Action[]; readonly ObjectPaths: Readonly<Record<string, ObjectPath>> };
};

const [INSTANTIATE, QUERY, METHOD, SET, TRACE] = [1, 2, 3, 4, 5];
const MOST_BYTES = 5_000_000;

/** Answers requests on a tree of objects; what the tree does not know is refused, as a misspelling should be. */
export function wireTo(root: () => Node) {
  const references = new Map<string, Node>();
  return (message: Message): unknown => {
    try {
      if (JSON.stringify(message.Body).length > MOST_BYTES)
        throw new Refusal("RequestPayloadSizeLimitExceeded", "5 MB");
      const paths = new Map<number, Node | null>();
      const results = message.Body.Actions.map((action) => ({
        ActionId: action.Id,
        Value: act(action, message, paths),
      }));
      const traces = message.Body.Actions.filter(({ ActionType }) => ActionType === TRACE);
      return answer({ Error: null, Results: results, TraceIds: traces.map(({ Id }) => Id) });
    } catch (error) {
      const { code, message: text } = error instanceof Refusal ? error : new Refusal("GeneralException", String(error));
      return answer({ Error: { Code: code, Message: text }, Results: [] });
    }
  };

  function act(action: Action, message: Message, paths: Map<number, Node | null>): unknown {
    if (action.ActionType === TRACE) return null;
    const target = nodeAt(action.ObjectPathId, message, paths);
    if (action.ActionType === INSTANTIATE) return target && identity(target);
    if (target === null) return null;
    if (action.ActionType === QUERY) return queried(target, action.QueryInfo?.Select ?? []);
    const args = argumentsOf(action.ArgumentInfo, message, paths);
    if (action.ActionType === SET) return known(target, target.set, action.Name)(args[0] as never);
    if (action.ActionType !== METHOD) throw new Refusal("GeneralException", `action ${action.ActionType}`);
    if (action.Name === "_KeepReference") {
      target.reference ??= `reference ${references.size + 1}`;
      references.set(target.reference, target);
      return null;
    }
    if (action.Name === "_RemoveReference") return null;
    known(target, target.call, action.Name)(...(args as never[]));
    return null;
  }

  function nodeAt(id: number, message: Message, paths: Map<number, Node | null>): Node | null {
    if (!paths.has(id)) paths.set(id, follow(message.Body.ObjectPaths[id]!, message, paths));
    return paths.get(id)!;
  }

  function follow(path: ObjectPath, message: Message, paths: Map<number, Node | null>): Node | null {
    if (path.ObjectPathType === 1) return root();
    if (path.ObjectPathType === 6) return references.get(path.Name)!;
    const parent = nodeAt(path.ParentObjectPathId!, message, paths);
    if (parent === null) return null;
    const args = argumentsOf(path.ArgumentInfo, message, paths) as never[];
    if (path.ObjectPathType === 4) return known(parent, parent.reach, path.Name)();
    const name = path.ObjectPathType === 5 ? "GetItem" : path.Name;
    return (known(parent, parent.call, name)(...args) as Node | undefined) ?? null;
  }

  function argumentsOf(info: Arguments | undefined, message: Message, paths: Map<number, Node | null>): unknown[] {
    return (info?.Arguments ?? []).map((one, i) => {
      const path = info?.ReferencedObjectPathIds?.[i];
      return path ? nodeAt(path, message, paths) : one;
    });
  }
}

function known<T>(node: Node, members: Record<string, T> | undefined, name: string): T {
  const found = members?.[name[0]!.toLowerCase() + name.slice(1)];
  if (!found) throw new Refusal("ApiNotFound", `${node.kind}.${name}`);
  return found;
}

/** What has an id is from now on known by it, whatever path led there. */
const identity = (node: Node) =>
  node.reference ? { _ReferenceId: node.reference } : node.ask?.id ? { Id: node.ask.id() } : {};

/** Asked as `protection/protected`, answered as `{ Protection: { Protected } }`. */
function queried(node: Node, select: readonly string[]): Record<string, unknown> {
  if (node.items) return { _Items: node.items().map((item) => ({ ...identity(item), ...queried(item, select) })) };
  const answered: Record<string, unknown> = {};
  for (const first of new Set(select.map((path) => path.split("/")[0]!))) {
    const below = select.filter((path) => path.startsWith(`${first}/`)).map((path) => path.slice(first.length + 1));
    const name = first[0]!.toUpperCase() + first.slice(1);
    answered[name] =
      below.length > 0 ? queried(known(node, node.reach, first)()!, below) : known(node, node.ask, first)();
  }
  return answered;
}

const answer = (body: object) => ({ ErrorCode: "", ErrorMessage: "", Headers: {}, Body: body });

import { asHostError, HostError } from "./errors";
import { load, unknownMember } from "./load";
import {
  type Action,
  actionType,
  type BatchError,
  type BatchRequest,
  type BatchResponse,
} from "./messages";
import { camel, Paths, type Roots } from "./paths";
import type { References } from "./references";
import { memberNamed, Served } from "./served";

/**
 * Runs the actions of a request in their order and stops at the first that fails; what was done
 * before it stays done.
 */
export function runBatch(request: BatchRequest, roots: Roots): BatchResponse {
  const paths = new Paths(request.ObjectPaths, roots);
  const results: { ActionId: number; Value: unknown }[] = [];
  const traces: number[] = [];
  for (const [index, action] of request.Actions.entries()) {
    try {
      results.push({ ActionId: action.Id, Value: perform(action, paths, roots.references) });
      if (action.ActionType === actionType.trace) traces.push(action.Id);
    } catch (thrown) {
      const error = describe(asHostError(thrown), index, locationOf(action, paths));
      return { Results: results, TraceIds: traces, Error: error };
    }
  }
  return { Results: results, TraceIds: traces };
}

function perform(action: Action, paths: Paths, references: References): unknown {
  if (action.ActionType === actionType.trace) return null;
  const served = paths.object(action.ObjectPathId);
  switch (action.ActionType) {
    case actionType.instantiate:
      return served?.identity() ?? null;
    case actionType.query:
      return load(served, action.QueryInfo ?? {});
    case actionType.method:
      return served === null ? null : callMethod(served, action, paths, references);
    case actionType.setProperty:
      if (served !== null) setProperty(served, action, paths);
      return null;
    default:
      throw new HostError(
        "ApiNotFound",
        `Actions of kind ${action.ActionType} are not available in this host.`,
      );
  }
}

function callMethod(served: Served, action: Action, paths: Paths, references: References): unknown {
  const { members, self } = served;
  if (action.Name === "_KeepReference" && members.isTracked === true) {
    served.reference ??= references.keep(served);
    return null;
  }
  const method = memberNamed(members.methods, action.Name);
  if (method === undefined) throw unknownMember(served, action.Name);
  const result = method.member(self, paths.arguments(action.ArgumentInfo));
  return result instanceof Served ? null : (result ?? null);
}

function setProperty(served: Served, action: Action, paths: Paths): void {
  const property = memberNamed(served.members.values, action.Name);
  if (property?.member.set === undefined) throw unknownMember(served, action.Name);
  property.member.set(served.self, paths.arguments(action.ArgumentInfo).json(0));
}

/** "Range.values": the class and member an action is about. */
function locationOf(action: Action, paths: Paths): string {
  const label = paths.label(action.ObjectPathId);
  if (action.ActionType === actionType.instantiate) return label;
  const member = action.ActionType === actionType.query ? "load" : action.Name;
  return label === "" ? camel(member) : `${label}.${camel(member)}`;
}

function describe(error: HostError, index: number, location: string): BatchError {
  return {
    Code: error.code,
    Message: error.message,
    ActionIndex: index,
    Location: location,
  };
}

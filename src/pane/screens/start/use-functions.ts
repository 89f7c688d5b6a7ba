import { useCallback, useEffect, useState } from "react";
import { type FunctionEntry, readFunctionList } from "../../model/function-list";

interface FunctionsState {
  readonly functions: readonly FunctionEntry[];
  readonly problem: string;
}

/** The worksheet functions, from the metadata that stands beside the page. */
export function useFunctions(): FunctionsState & { readonly again: () => void } {
  const [state, setState] = useState<FunctionsState>({ functions: [], problem: "" });
  const load = useCallback(async () => {
    setState({ functions: [], problem: "" });
    try {
      const answer = await fetch("functions.json");
      if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
      setState({ functions: readFunctionList(await answer.json()), problem: "" });
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      setState({ functions: [], problem: `The list of functions could not be read: ${why}.` });
    }
  }, []);
  useEffect(() => void load(), [load]);
  return { ...state, again: () => void load() };
}

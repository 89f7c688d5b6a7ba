import { createContext, useContext } from "react";
import type { Target } from "../../model/trace-cells";

/** Selects a place in the workbook and traces it. */
type Go = (target: Target) => void;

const GoContext = createContext<Go>(() => {});

export const GoProvider = GoContext.Provider;

export const useGo = (): Go => useContext(GoContext);

import { lazy } from "react";

// These screens are fetched when first opened: the charts alone outweigh the rest of the pane.
export const BoxesScreen = lazy(() =>
  import("./boxes/boxes-screen").then((part) => ({ default: part.BoxesScreen })),
);
export const FitScreen = lazy(() =>
  import("./fit/fit-screen").then((part) => ({ default: part.FitScreen })),
);
export const ReadingsScreen = lazy(() =>
  import("./readings/readings-screen").then((part) => ({ default: part.ReadingsScreen })),
);
export const RatesScreen = lazy(() =>
  import("./rates/rates-screen").then((part) => ({ default: part.RatesScreen })),
);
export const TraceScreen = lazy(() =>
  import("./trace/trace-screen").then((part) => ({ default: part.TraceScreen })),
);
export const RecordScreen = lazy(() =>
  import("./record/record-screen").then((part) => ({ default: part.RecordScreen })),
);
export const StartScreen = lazy(() =>
  import("./start/start-screen").then((part) => ({ default: part.StartScreen })),
);

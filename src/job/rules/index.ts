/** The trade's rules for one reading, room or dwelling: editions applied through formulas. */
export * from "./constants";
export * from "./dwelling-rate";
export * from "./next-opening";
export * from "./openings-label";
export * from "./plan-openings";
export * from "./range-status";
export * from "./room-rate";
export * from "./verdict";

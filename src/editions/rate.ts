/** "ip": cfm, ft², ft³. "si": L/s, m², m³. Each has its own numbers; none is converted. */
export type System = "ip" | "si";

/** A number for each system that the edition itself states. */
export type Rate = Readonly<Partial<Record<System, number>>>;

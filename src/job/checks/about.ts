import type { Job, Table } from "../read";

/** The row's own name; a firm's fan may have its name beside or over it. */
export function aboutIn({ fans, firm }: Job, table: Table): (i: number) => string {
  return firm && fans?.table === table ? (i) => fans.label(i) : aboutRow(table);
}

/** The row's own name: its first text fields. */
export function aboutRow(table: Table): (i: number) => string {
  const keys = table.layout.names.filter((key) => table.has(key));
  return (i) =>
    keys
      .map((key) => table.text(key, i))
      .filter((text) => text !== "")
      .join(", ");
}

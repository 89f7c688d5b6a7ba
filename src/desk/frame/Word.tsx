/** The name of a tool: out of sight on a narrow page, where its picture stands alone. */
export function Word({ children }: { children: string }) {
  return <span className="desk-word">{children}</span>;
}

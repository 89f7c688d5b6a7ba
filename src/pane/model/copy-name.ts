export type CopyKind = "plain" | "values" | "field" | "estimate";

const longest = 60;

/** "Alder Terrace-plain.xlsx": a copy's file name, without signs that a file's name cannot have. */
export function copyFileName(job: string, kind: CopyKind): string {
  const plain = job
    .replace(/[\p{Cc}<>:"/\\|?*]/gu, " ")
    .replace(/\s+/g, " ")
    .slice(0, longest)
    .replace(/^[.\s]+|[.\s]+$/g, "");
  return `${plain === "" ? "job" : plain}-${kind}.xlsx`;
}

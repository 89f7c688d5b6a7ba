const workbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** A copy of another kind than the job itself. */
export type CopyKind = "plain" | "values" | "csv";

/** Gives a workbook's bytes, or a text, to the browser as a download. */
export function download(content: Uint8Array | string, fileName: string): void {
  const type = typeof content === "string" ? "text/csv" : workbookType;
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser reads the address after the click; a minute is ample.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** "job.xlsx" as "job-copy.xlsx": a saved copy never takes the place of what was opened. */
export function copyName(fileName: string): string {
  const stem = fileName.replace(/\.xlsx$/i, "");
  return /-copy(-\d+)?$/.test(stem) ? `${stem}.xlsx` : `${stem}-copy.xlsx`;
}

/** "job.xlsx" as "job-plain.xlsx", or with a sheet's name as "job-Fans.csv". */
export function kindName(fileName: string, kind: CopyKind, sheet: string): string {
  const stem = fileName.replace(/\.xlsx$/i, "");
  return kind === "csv" ? `${stem}-${sheet}.csv` : `${stem}-${kind}.xlsx`;
}

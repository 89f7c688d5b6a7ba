const workbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Gives the bytes to the browser as a download. */
export function download(bytes: Uint8Array, fileName: string): void {
  const address = URL.createObjectURL(new Blob([bytes as BlobPart], { type: workbookType }));
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

/** "job.xlsx" as "job-plain.xlsx". */
export function kindName(fileName: string, kind: "plain" | "values"): string {
  return `${fileName.replace(/\.xlsx$/i, "")}-${kind}.xlsx`;
}

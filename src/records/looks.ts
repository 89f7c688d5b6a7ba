import type { Look } from "./plan";

const ink = "1F4E4A";
const size = 10;

/** The looks of record sheets. "_)" keeps numbers a little off the text beside them. */
export const looks = {
  title: { bold: true, size: 16, color: ink },
  subtitle: { size: 12, color: "404040", line: "heavy under" },
  section: { bold: true, size: 11, color: ink, line: "heavy under" },
  label: { size, color: "595959", wrap: true },
  text: { size, wrap: true, align: "left" },
  strong: { size, bold: true, wrap: true, align: "left" },
  note: { size: 9, italic: true, color: "595959", wrap: true },
  head: { size: 9, bold: true, fill: "E3ECEA", wrap: true, align: "left", line: "under" },
  headNumber: {
    size: 9,
    bold: true,
    fill: "E3ECEA",
    wrap: true,
    align: "right",
    line: "under",
  },
  strongCell: { size, bold: true, wrap: true, align: "left", line: "under" },
  cell: { size, wrap: true, align: "left", line: "under" },
  small: { size: 9, wrap: true, align: "left", line: "under" },
  whole: { size, align: "right", format: "0_)", line: "under" },
  tenth: { size, align: "right", format: "0.0_)", line: "under" },
  hundredth: { size, align: "right", format: "0.00_)", line: "under" },
  number: { size, align: "right", format: "General_)", line: "under" },
  signature: { size, color: "595959", valign: "bottom" },
  /** A line to write on. */
  blank: { size, line: "under" },
  /** Figures that a chart is drawn from, beside the printed page. */
  aside: { size: 8, color: "808080", format: "0.0" },
} as const satisfies Record<string, Look>;

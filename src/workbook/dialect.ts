/** The namespaces a package is written in: the usual (transitional) ones or those of the strict dialect. */
export interface Dialect {
  /** SpreadsheetML itself. */
  readonly main: string;
  /** The r: attributes and the start of relationship types. */
  readonly relationships: string;
  /** DrawingML: its base, charts, and drawings on a sheet. */
  readonly drawing: string;
  readonly chart: string;
  readonly sheetDrawing: string;
}

export const transitional: Dialect = {
  main: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
  relationships: "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
  drawing: "http://schemas.openxmlformats.org/drawingml/2006/main",
  chart: "http://schemas.openxmlformats.org/drawingml/2006/chart",
  sheetDrawing: "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
};

export const strict: Dialect = {
  main: "http://purl.oclc.org/ooxml/spreadsheetml/main",
  relationships: "http://purl.oclc.org/ooxml/officeDocument/relationships",
  drawing: "http://purl.oclc.org/ooxml/drawingml/main",
  chart: "http://purl.oclc.org/ooxml/drawingml/chart",
  sheetDrawing: "http://purl.oclc.org/ooxml/drawingml/spreadsheetDrawing",
};

/** The namespaces a package is written in: the usual (transitional) ones or those of the strict dialect. */
export interface Dialect {
  /** SpreadsheetML itself. */
  readonly main: string;
  /** The r: attributes and the start of relationship types. */
  readonly relationships: string;
}

export const transitional: Dialect = {
  main: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
  relationships: "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
};

export const strict: Dialect = {
  main: "http://purl.oclc.org/ooxml/spreadsheetml/main",
  relationships: "http://purl.oclc.org/ooxml/officeDocument/relationships",
};

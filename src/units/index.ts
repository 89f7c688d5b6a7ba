/** The units of the trade, the spellings found in headings, and the conversions, in one place. */
export * from "./table";

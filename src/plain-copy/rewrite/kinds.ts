/** What native functions make of ranges, as far as rewriting needs to know. */
const names = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

/** One value for each cell they are given. */
export const cellByCell = names(
  `IF IFERROR ABS INT ROUND ROUNDUP ROUNDDOWN TRUNC SQRT EXP LN LOG LOG10 POWER MOD SIGN PI
   TRIM UPPER LOWER PROPER LEFT RIGHT MID LEN TEXT VALUE SUBSTITUTE FIND SEARCH REPT EXACT
   ISNUMBER ISTEXT ISBLANK ISERROR ISNA ISERR ISLOGICAL ISNONTEXT NOT DATE YEAR MONTH DAY NA TRUE
   FALSE ROW COLUMN CHAR CODE CEILING FLOOR EVEN ODD IFNA`,
);

/** One value, whatever ranges they are given. */
export const oneForAll = names(
  `SUM AVERAGE AVERAGEA MIN MAX MINA MAXA COUNT COUNTA COUNTBLANK PRODUCT MEDIAN STDEV STDEVP VAR
   VARP STDEV.S STDEV.P VAR.S VAR.P LARGE SMALL RANK SUMIF SUMIFS COUNTIF COUNTIFS AVERAGEIF
   AVERAGEIFS MAXIFS MINIFS SUMPRODUCT SUMSQ GEOMEAN HARMEAN MATCH XMATCH VLOOKUP HLOOKUP LOOKUP
   INDEX AND OR ROWS COLUMNS SUBTOTAL AGGREGATE CHOOSE TODAY NOW CONCATENATE CONCAT TEXTJOIN SLOPE
   INTERCEPT CORREL PERCENTILE QUARTILE MODE`,
);

/** Functions that take an array as well as a range in any of their arguments, without more ado. */
export const takesArrays = names(
  "SUM AVERAGE MIN MAX COUNT COUNTA PRODUCT MEDIAN STDEV STDEVP VAR VARP STDEV.S STDEV.P VAR.S VAR.P " +
    "LARGE SMALL SUMPRODUCT SUMSQ INDEX MATCH VLOOKUP HLOOKUP LOOKUP ROWS COLUMNS AND OR",
);

/** What they give may be a reference, hence a blank cell. */
export const mayBeReference = names("IF INDEX CHOOSE OFFSET");

/** What they give depends on the cell or sheet they stand in. */
export const placeBound = names("INDIRECT CELL");

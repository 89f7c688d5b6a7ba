/**
 * Functions that gave what Excel stored in every formula of workbooks that others wrote, but for
 * arguments no job has. Of the others we do not claim to know better than a stored value.
 */
const agreeing = new Set(
  `ABS ACOS AND ASIN ATAN ATAN2 AVERAGE AVERAGEIF AVERAGEIFS CHOOSE COLUMN COLUMNS CONCAT
  CONCATENATE COS COSH COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE DATEVALUE DAY DEGREES EVEN EXACT
  EXP FACT FALSE FIND HLOOKUP HOUR IF IFERROR IFNA IFS INDEX INT ISBLANK ISERR ISERROR ISLOGICAL ISNA
  ISNONTEXT ISNUMBER ISTEXT LARGE LEFT LEN LN LOG LOG10 LOWER MATCH MAX MAXIFS MEDIAN MID MIN MINIFS
  MINUTE MOD MONTH N NA NOT ODD OR PI POWER PRODUCT PROPER RADIANS RANK RANK.EQ REPLACE REPT RIGHT
  ROUND ROUNDDOWN ROUNDUP ROW ROWS SECOND SIGN SIN SINH SMALL SQRT STDEV STDEV.P STDEV.S STDEVP
  SUBSTITUTE SUM SUMIF SUMIFS SUMPRODUCT SUMSQ SWITCH T TAN TANH TEXTJOIN TIME TRIM TRUE TRUNC UPPER
  VAR VAR.P VAR.S VARP VLOOKUP WEEKDAY XLOOKUP YEAR`.split(/\s+/),
);

export const isKnownNative = (name: string): boolean => agreeing.has(name);

const texts = /"(?:[^"]|"")*"|'(?:[^']|'')*'/g;
const calls = /([A-Za-z_][A-Za-z0-9_.]*)\s*\(/g;

/**
 * Whether all in a formula is known to give here what a spreadsheet program gives: our own
 * functions, which run the very same code there, and native ones that were compared. Criteria of
 * exclusion, references to other workbooks and lost references are not known.
 */
export function isKnownToAgree(formula: string): boolean {
  if (/"[^"]*<>[^"]*"/.test(formula)) return false;
  const bare = formula.replace(texts, "");
  if (/#REF!|\[(?!2\]!_xldudf)/.test(bare)) return false;
  for (const [, name = ""] of bare.matchAll(calls)) {
    const plain = name.toUpperCase().replace(/^(_XLFN\.|_XLWS\.)+/, "");
    if (!agreeing.has(plain) && !/^(_XLDUDF_)?FANROW[._]/.test(plain)) return false;
  }
  return true;
}

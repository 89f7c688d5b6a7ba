/**
 * How each worksheet function comes to its result, told from the values of its arguments: formulas
 * in symbols and numbers, the rule that was looked up, the source. WORKING and the trace share it.
 */
export {
  type CallWorking,
  callLines,
  callText,
  explainCall,
  knownWorkings,
  workingFor,
} from "./explain";
export { ArgumentError, type At } from "./given";
export { type SaidSource, type SaidSum, sumLines } from "./say";

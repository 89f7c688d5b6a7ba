/** functions.json, generated from the comments of the worksheet functions. */
export { committedMetadata, generateMetadata } from "./generate";

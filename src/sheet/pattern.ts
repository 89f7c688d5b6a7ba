export { rowPattern, rowPlaces } from "../workbook";

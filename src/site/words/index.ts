import type { Descriptions } from "../help/page";
import type { Page } from "../html/page";
import { firmPage } from "./firm-page";
import { indexPage } from "./index-page";
import { privacyPage } from "./privacy-page";
import { supportPage } from "./support-page";

/** The pages that are not about one function. */
export const wordPages = (told: Descriptions): Page[] => [
  indexPage(told),
  firmPage(),
  supportPage(),
  privacyPage(),
];

import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { extracts } from "./uk-adf";

const source = sourcesIn("Technical Booklet K 2012");

export const northernIreland = edition(
  "TBK-2012",
  "Northern Ireland, Technical Booklet K 2012",
  "si",
  {
    aliases: ["Northern Ireland", "Technical Booklet K"],
    rooms: extracts(() => source("extract rates")),
  },
);

import type { Mark, Source } from "../formulas";

interface Document {
  readonly title: string;
  /** The day on which the numbers were read in it. */
  readonly traced: string;
}

const adopted = (what: string): Document => ({
  title: `${what}, as adopted, word for word (github.com/thexqin/us-building-codes-dataset, January 2026)`,
  traced: "2026-11-27",
});
const page = (title: string, traced = "2026-11-27"): Document => ({ title, traced });
const earlier = "2026-11-25";

/** Where numbers were read. A number carries the titles of its documents and the last day. */
const documents = {
  irc2015: adopted("IRC 2015 in Alabama"),
  irc2018: adopted("IRC 2018 in Tennessee"),
  irc2021: adopted("IRC 2021 in Pennsylvania, Texas and five more states"),
  irc2024: adopted("IRC 2024 at federal buildings and in Georgia"),
  washington: adopted("Washington's amendment of the IRC 2021, WAC 51-51-1505"),
  oregon: adopted("Oregon Residential Specialty Code 2023"),
  northCarolina: adopted("North Carolina's amendment of the IRC 2021"),
  florida: adopted("Florida Building Code, Residential, 2023"),
  newYork: adopted("Residential Code of New York State 2025"),
  southCarolina: adopted("South Carolina's amendment of the IRC 2021"),
  alaska: adopted("Alaska's amendment of the IRC 2018"),
  lexington: page("records of Lexington, Massachusetts: IRC table M1504.2", earlier),
  imc2024: page("two pages of one author on IMC 2024, section 403 (masterbuildconsulting.com)"),
  wac2018: page("Washington State energy code 2018, WAC 51-11R-40351"),
  cfr460: page("10 CFR 460.204, table 1 (lexbuild.dev)"),
  cfr2001: page("24 CFR, edition of 2001, volume 5 (gpo.gov)", earlier),
  upc2021: page("2021 UPC/UMC, appendix E, which copies 62.2-2016 (tvch.moe, up.codes)", earlier),
  leed: page("LEED for Homes 2008, EQc5, and a LEED text on 62.2-2010"),
  lbl: page("national laboratory's guide on local exhaust and sound (homes.lbl.gov)"),
  basc: page("Building America guides on fan ratings and kitchens (basc.pnnl.gov)"),
  ashraeJournal: page("ASHRAE Journal on 62.2 in existing buildings", earlier),
  construction: page("construction reference page on 62.2", earlier),
  yesKitchen: page("a page on kitchens under 62.2"),
  acrNews: page("trade paper, committee's chair on 62.2-2010 and 2013 (achrnews.com)"),
  acca: page("trade association on 62.2-2013 (hvac-blog.acca.org)"),
  abstract2020: page("abstract of a document of 2020 on 62.2, 4.1.2"),
  everett: page("City of Everett: Washington State code M1508.3", earlier),
  ra37: page("California Residential Appendix RA3.7, 2013 and 2022"),
  californiaPages: page("two pages on California's rates (legalclarity.org, engineerfix.com)"),
  regionalNote: page("local governments' note on hood verification, 2022 code (3c-ren.org)"),
  nrc: page("intent statements on NBC 9.32.3.7 (codes-guides.nrc.ca)"),
  ukCourse: page("course text on Approved Document F"),
  ukExam: page("examination questions on Approved Document F"),
  ireland: page("title pages and corrections of TGD F 2019 (scribd.com)"),
  archiseek: page("Irish text of 2002 to 2009 (archiseek.com)"),
  healthyHomes: page("page on the Healthy Homes ventilation standard (gforce.co.nz)"),
  ncc2019: page("NCC 2019, 3.8.7.3, quoted by a building surveyor"),
  dutch: page("Dutch texts on Bbl and Bouwbesluit 2012 article 3.29"),
  tek17: page("TEK17 § 13-2 (dibk.no)"),
  passiveHouse: page("Passive House association, California (passivehousecal.org)"),
  resnet6: page("RESNET standards, chapter 6 (standards.resnet.us)", "2026-11-28"),
  chapter8: page(
    "university energy centre on RESNET standard 804 (blog.energyresearch.ucf.edu)",
    earlier,
  ),
  fieldGuide: page(
    "field test guide of a national laboratory (buildingsfieldtest.nrel.gov)",
    earlier,
  ),
  fieldStudy: page("abstract at the laboratory (buildings.lbl.gov)", earlier),
  hoodStudy: page("a trade page that quotes it (greenbuildingadvisor.com)", earlier),
  french: page("a French page on the decree of 1982"),
  german: page("a German page on DIN 18017-3"),
} as const satisfies Record<string, Document>;

export type DocumentId = keyof typeof documents;

/** The sources in one work: by clause, mark and the documents in which the number was read. */
export function sourcesIn(work: string) {
  return (clause: string, mark: Mark = "from memory", ...read: DocumentId[]): Source => {
    if (read.length === 0) return { work, clause, mark };
    const found = read.map((id): Document => documents[id]);
    const [traced = ""] = found
      .map((each) => each.traced)
      .sort()
      .reverse();
    return { work, clause, mark, document: found.map(({ title }) => title).join("; "), traced };
  };
}

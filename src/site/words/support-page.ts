import { namespace } from "../../../functions";
import { type Html, html } from "../html/escape";
import type { Page } from "../html/page";

interface Recipe {
  readonly title: string;
  readonly why: string;
  readonly steps: readonly string[];
}

const recipes: readonly Recipe[] = [
  {
    title: "#NAME?",
    why: "Excel does not know the function: the add-in is not loaded in this copy of Excel, or the name is misspelled.",
    steps: [
      `Type =${namespace}. into a cell. If no list of functions opens, the add-in is not loaded: add it as the first page says.`,
      "If the list opens, pick the name from it.",
      "A workbook saved on a machine without the add-in keeps #NAME? in its cells. With the add-in loaded, re-enter the formulas: select the cells, Replace = by =.",
      "Look at the version of Excel: Excel 2019 and older, and Excel on an iPad, run no custom functions. The first page says which do.",
    ],
  },
  {
    title: "#BUSY!",
    why: "The functions are still being loaded. This lasts a few seconds after a workbook is opened.",
    steps: [
      "Wait. If it stays, the page or functions.js did not arrive: open the address in the manifest with a browser on the same machine.",
      "A warning about the certificate in that browser is the reason: have the certificate trusted on this machine.",
      "Close every Excel window and start anew.",
    ],
  },
  {
    title: "A new function or argument does not show",
    why: "Excel keeps a copy of functions.json and of the manifest. After an update of the site it may go on with the old ones.",
    steps: [
      "Close every Excel window and start anew.",
      "Remove the add-in and add it again.",
      "Clear the Office cache: on Windows empty the folder %LOCALAPPDATA%\\Microsoft\\Office\\16.0\\Wef; on the web clear the browser's site data.",
      "Whoever serves the site: send Cache-Control: no-cache with functions.json, and raise Version in the manifest on every change.",
    ],
  },
  {
    title: "The group Fanrow is not on the Home tab, or the pane stays grey",
    why: "Excel goes on with an older manifest, or the pane's code did not arrive.",
    steps: [
      "Close every Excel window and start anew. Then remove the add-in and add it again.",
      "Open pane.html at the address in the manifest with a browser on the same machine: it must come without a warning, and say that it is the pane of an Excel add-in.",
      "If it comes and the pane stays grey all the same, clear the Office cache as described above.",
    ],
  },
  {
    title: "#VALUE! or #N/A with a message",
    why: "The function has read its arguments and says what will not do. #N/A means that something is missing, #VALUE! that something cannot be used.",
    steps: [
      "Point at the error sign beside the cell, or click it, to read the message.",
      "Mend the cell that it names; only its own row is spoiled.",
    ],
  },
  {
    title: "#SPILL!",
    why: "A range went in, so a range comes out, and the cells beside or below are not free. Inside an Excel table nothing may spill.",
    steps: [
      "Clear the cells in the way.",
      "In a table, give each argument as the cell of the same row.",
    ],
  },
  {
    title: "A blank instead of a result",
    why: "The reading is blank. A blank is never taken as 0.",
    steps: ["Type the reading."],
  },
];

export function supportPage(): Page {
  return {
    file: "support.html",
    title: "Support",
    body: html`<h1>Support</h1>
<p>What to do when a cell does not show what you expect. <strong>Verify in your Excel:</strong> the steps that go through Excel's own menus, folders and caches follow Microsoft's documentation and were not tried here.</p>
${recipes.map(recipePart)}`,
  };
}

function recipePart({ title, why, steps }: Recipe): Html {
  return html`<h2>${title}</h2>
<p>${why}</p>
<ol>
${steps.map((step) => html`<li>${step}</li>\n`)}</ol>
`;
}

import { namespace } from "../../../functions";
import { type Html, html } from "../html/escape";
import type { Page } from "../html/page";

interface Way {
  readonly title: string;
  readonly when: string;
  readonly steps: readonly (string | Html)[];
}

const ways: readonly Way[] = [
  {
    title: "1. Put the site on a server of your own",
    when: "Any web server for files will do, inside the firm or outside. Nothing runs on it.",
    steps: [
      html`Choose its address, such as <code>https://fans.example.org/fanrow/</code>. It must answer over https with a certificate that every machine of the firm trusts.`,
      html`On a machine with Node, in the folder of this project, make the site and the manifest for that address: <code>npm ci</code>, <code>npm run build</code>, then <code>npm run manifest -- https://fans.example.org/fanrow/</code>. Both are in the folder <code>dist</code>.`,
      html`Copy the whole folder to the server, and let it send the headers listed below.`,
      html`Open <code>pane.html</code> at that address on one machine of the firm. It must come without a warning.`,
    ],
  },
  {
    title: "2a. Give the manifest to everyone, from the admin centre",
    when: "Where the firm has Microsoft 365 with an administrator. It reaches Windows, Mac and the web.",
    steps: [
      "The administrator opens the Microsoft 365 admin centre: Settings, Integrated apps, Upload custom apps, Office Add-in.",
      "Upload manifest.xml, and choose who gets it.",
      "Excel shows it within a day. Until then people may start Excel anew.",
    ],
  },
  {
    title: "2b. Windows, from a shared folder",
    when: "Where there is no administrator, or for a trial.",
    steps: [
      html`Put <code>manifest.xml</code> into a folder that the firm's machines reach over the network, such as <code>\\\\server\\addins</code>.`,
      "On each machine, in Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs.",
      "Enter the folder's network path, Add catalog, tick Show in Menu, OK.",
      "Start Excel anew. Home, Add-ins, More Add-ins, Shared Folder: choose Fanrow, Add.",
    ],
  },
  {
    title: "2c. Mac, from a folder",
    when: "For each person of the machine.",
    steps: [
      html`Make the folder <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code> where it is not there.`,
      html`Copy <code>manifest.xml</code> into it and start Excel anew.`,
      "Home, Add-ins: choose Fanrow under Developer Add-ins.",
    ],
  },
  {
    title: "2d. Excel on the web, by upload",
    when: "For one person and browser.",
    steps: [
      "Open a workbook. Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in.",
      "Choose manifest.xml, Upload. It stays in this browser until its site data is cleared.",
    ],
  },
  {
    title: "3. See that it works",
    when: "On one machine of each kind.",
    steps: [
      html`Type <code>=${namespace}.FLOW(24, 4)</code> into a cell. It gives 51.36.`,
      "On the Home tab the group Fanrow shows the pane; let it check a job.",
    ],
  },
  {
    title: "4. A newer version",
    when: "The manifest needs to change only where its own text or the address does.",
    steps: [
      "Build it, and copy the folder over the old one.",
      "Excel may go on with the old functions for up to a day. The support page says how to hurry it.",
    ],
  },
];

/** How a firm puts the add-in on a server of its own and brings it to its people. */
export function firmPage(): Page {
  return {
    file: "firm.html",
    title: "For a firm",
    body: html`<h1>For a firm</h1>
<p>The add-in is a folder of files and one manifest that names their address. Nothing leaves a machine: readings stay in the workbook. <strong>Verify in your Excel:</strong> the steps follow Microsoft's documentation, whose menus move from version to version, and were not tried here.</p>
${ways.map(wayPart)}
<h2>What the server must send</h2>
<ul>
<li><code>Access-Control-Allow-Origin: *</code> with <code>functions.json</code></li>
<li><code>Cache-Control: no-cache</code> with <code>.html</code>, <code>.json</code> and <code>functions.js</code></li>
<li>no <code>X-Frame-Options</code>: Excel on the web shows the add-in in a frame. To say who may, send <code>Content-Security-Policy: frame-ancestors</code> with Office's hosts; <code>npm run serve:excel</code> sends one to start from</li>
<li>files under <code>assets/</code> may be kept for good: their names change with their content</li>
</ul>
<h2>The command, without this project</h2>
<p><code>npm pack</code> makes one file of the command and the site. <code>npm install -g</code> of that file gives the command <code>fanrow</code> on any machine with Node, for checking folders of workbooks by night.</p>`,
  };
}

function wayPart({ title, when, steps }: Way): Html {
  return html`<h2>${title}</h2>
<p>${when}</p>
<ol>
${steps.map((step) => html`<li>${step}</li>\n`)}</ol>
`;
}

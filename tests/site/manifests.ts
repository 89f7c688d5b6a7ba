import { readFileSync } from "node:fs";
import { join } from "node:path";
import { worksheetFunctions } from "../../functions";
import { helpFile } from "../../src/site";

export const root = join(import.meta.dirname, "../..");

/** The committed manifest. */
export const committed = readFileSync(join(root, "manifest.xml"), "utf8");

/** The files that the manifest may name, written down apart from the build. */
export const siteFiles: readonly string[] = [
  "functions.html",
  "functions.js",
  "functions.json",
  "index.html",
  "support.html",
  "privacy.html",
  "manifest.xml",
  ...[16, 32, 64, 80, 128].map((size) => `icons/icon-${size}.png`),
  ...worksheetFunctions.map(({ id }) => helpFile(id)),
];

/** Text with one passage changed. Throws where the passage is not there, once. */
export function changed(text: string, from: string, to: string): string {
  if (text.split(from).length !== 2) throw new Error(`"${from}" must stand in the text once`);
  return text.replace(from, () => to);
}

const button = (id: string, action: string) => `
                <Control xsi:type="Button" id="${id}">
                  <Label resid="Pane.Label" />
                  <Supertip><Title resid="Pane.Label" /><Description resid="Pane.Tip" /></Supertip>
                  <Icon>
                    <bt:Image size="16" resid="Icon.16" />
                    <bt:Image size="32" resid="Icon.32" />
                    <bt:Image size="80" resid="Icon.80" />
                  </Icon>
                  ${action}
                </Control>`;

const ribbon = `
        <DesktopFormFactor>
          <FunctionFile resid="Page.Url" />
          <ExtensionPoint xsi:type="PrimaryCommandSurface">
            <OfficeTab id="TabHome">
              <Group id="Fanrow.Group">
                <Label resid="Pane.Label" />
                <Icon>
                  <bt:Image size="16" resid="Icon.16" />
                  <bt:Image size="32" resid="Icon.32" />
                  <bt:Image size="80" resid="Icon.80" />
                </Icon>${button("Fanrow.Open", '<Action xsi:type="ShowTaskpane"><SourceLocation resid="Page.Url" /></Action>')}${button("Fanrow.Check", '<Action xsi:type="ExecuteFunction"><FunctionName>checkSheet</FunctionName></Action>')}
              </Group>
            </OfficeTab>
          </ExtensionPoint>
        </DesktopFormFactor>`;

/** The committed manifest with a group of two buttons on the ribbon: `checkSheet` is an action. */
export const withRibbon = [
  ["</AllFormFactors>", `</AllFormFactors>${ribbon}`],
  [
    "</bt:ShortStrings>",
    `<bt:String id="Pane.Label" DefaultValue="Fanrow" /></bt:ShortStrings>
      <bt:LongStrings><bt:String id="Pane.Tip" DefaultValue="Opens the pane." /></bt:LongStrings>`,
  ],
].reduce((text, [from, to]) => changed(text, from as string, to as string), committed);

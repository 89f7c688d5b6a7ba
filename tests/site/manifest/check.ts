import { developmentAddress } from "../../../src/site/manifest/address";
import { actionNames } from "../../../src/site/pages/actions";
import { faults } from "./faults";
import { type Element, label, parseXml, within } from "./xml";

export interface CheckOptions {
  /** Names given to `Office.actions.associate`; those of the pane's page where left out. */
  readonly actions?: readonly string[];
  /** The address that every URL must begin with; the development address where left out. */
  readonly address?: string;
}

/**
 * The faults of an add-in manifest that its schema does not see. An empty list is a sound one.
 *
 * `builtFiles` are the files of the built site relative to its address: `help/flow.html`. Each
 * finding names the element, its line, and the mend. Works offline.
 */
export function checkManifest(
  xml: string,
  builtFiles: readonly string[],
  options: CheckOptions = {},
): string[] {
  let root: Element;
  try {
    root = parseXml(xml);
  } catch (error) {
    return [`manifest: not well-formed XML at ${(error as Error).message}; mend it there`];
  }
  const manifest = {
    root,
    builtFiles: new Set(builtFiles),
    actions: options.actions ?? actionNames,
    address: options.address ?? developmentAddress,
  };
  return [...within(root)].flatMap((element) =>
    faults
      .filter(([names]) => names === "*" || names.split(" ").includes(element.name))
      .flatMap(([, of]) => of(element, manifest))
      .flatMap((fault) => (fault ? [`${label(element)}: ${fault}`] : [])),
  );
}

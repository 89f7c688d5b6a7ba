import { longest } from "../facts";
import type { Check } from "../finding";
import { at, childrenOf } from "../xml";

const guid = /^\{?[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\}?$/i;

/** Id, version and the texts of the manifest's head. */
export const identity: Check = ({ root }) => {
  const found: string[] = [];
  if (root.name !== "OfficeApp" || root.attributes.get("type") !== "TaskPaneApp")
    found.push(
      `${root.name}: the manifest must be an OfficeApp with xsi:type="TaskPaneApp"; set both`,
    );
  const id = at(root, "Id")?.text.trim();
  if (id !== undefined && !guid.test(id))
    found.push(`Id "${id}": not a GUID; write 8-4-4-4-12 hexadecimal digits`);
  if (id !== undefined && /^\{?[0-]+\}?$/.test(id))
    found.push(`Id "${id}": all zeros is shared by nobody; make a new GUID`);
  const version = at(root, "Version")?.text.trim();
  if (version !== undefined && !/^\d{1,5}(\.\d{1,5}){3}$/.test(version))
    found.push(`Version "${version}": write four numbers, such as 1.0.0.0`);
  else if (version !== undefined && Number.parseInt(version, 10) < 1)
    found.push(`Version "${version}": Office takes 1.0.0.0 or later; raise the first number`);
  const provider = at(root, "ProviderName")?.text.trim() ?? "";
  if (provider.length > longest.shortString)
    found.push(
      `ProviderName: ${provider.length} characters; shorten it to ${longest.shortString} or fewer`,
    );
  const texts = [
    ["DisplayName", longest.shortString],
    ["Description", longest.longString],
  ] as const;
  for (const [name, limit] of texts)
    for (const element of childrenOf(root, name)) {
      const { length } = element.attributes.get("DefaultValue")?.trim() ?? "";
      if (length === 0) found.push(`${name}: DefaultValue is missing or blank; give it a text`);
      if (length > limit)
        found.push(`${name}: ${length} characters; shorten it to ${limit} or fewer`);
    }
  return found;
};

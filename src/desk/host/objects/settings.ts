import type { OpenBook } from "../open-book";
import type { Json } from "../wire/messages";
import { collection, type Members } from "../wire/served";
import type { Desk } from "./desk";

export function settingsMembers(desk: Desk): Members<OpenBook> {
  const { settings } = desk.book;
  return collection<OpenBook>({
    className: "SettingCollection",
    items: () => settings.keys().map(desk.setting),
    find: (_, key) => (settings.has(key) ? desk.setting(key) : null),
    missing: (key) => `There is no setting "${key}".`,
    methods: {
      add(_, args) {
        const key = args.text(0, "The key");
        settings.set(key, args.json(1));
        return desk.setting(key);
      },
    },
  });
}

export function settingMembers(desk: Desk): Members<string> {
  const { settings } = desk.book;
  return {
    className: "Setting",
    identify: (key) => ({ _Id: key }),
    values: {
      key: { get: (key) => key },
      value: {
        get: (key) => settings.get(key) ?? null,
        set: (key, value) => settings.set(key, value as Json),
      },
    },
    methods: { delete: (key) => settings.remove(key) },
  };
}

import type { Events } from "../events";
import { eventType } from "../events";

/** The names under which the client registers for each event. */
const names = {
  _RegisterDataChangedEvent: eventType.changed,
  _RegisterCalculatedEvent: eventType.calculated,
  _RegisterSelectionChangedEvent: eventType.selectionChanged,
  _RegisterActivatedEvent: eventType.activated,
} as const;

/** The methods that register for events: of one sheet by its id, or of all sheets. */
export function eventMethods<T>(
  events: Events,
  sheetId: ((self: T) => string) | null,
): Record<string, (self: T) => void> {
  const methods: Record<string, (self: T) => void> = {};
  for (const [name, type] of Object.entries(names)) {
    const target = (self: T) => (sheetId === null ? null : sheetId(self));
    methods[name] = (self) => events.register(type, target(self));
    methods[name.replace("_Register", "_Unregister")] = (self) =>
      events.unregister(type, target(self));
  }
  return methods;
}

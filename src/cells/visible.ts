// Control characters, direction overrides, and what takes no room: none of it may act on a screen.
const acting =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|[\u{e0000}-\u{e007f}]|\p{Surrogate}/gu;

/**
 * Text from a cell or a file name with every character that would act on a terminal or a page shown
 * as a mark: the control pictures of Unicode, such as ␛ and ␊, or else its number, as ‹U+202E›.
 */
export function visible(text: string): string {
  return text.replace(acting, markOf);
}

/** An object with all its texts made visible. */
export function visibleIn<T extends object>(object: T): T {
  const made: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(object))
    made[key] = typeof value === "string" ? visible(value) : value;
  return made as T;
}

/** JSON in which such characters are escaped: it says the same, and prints harmlessly. */
export function visibleJson(json: string): string {
  return json.replace(acting, (character) =>
    character === "\n" ? character : [...units(character)].map(escaped).join(""),
  );
}

function* units(text: string): Iterable<number> {
  for (let at = 0; at < text.length; at++) yield text.charCodeAt(at);
}

function escaped(unit: number): string {
  return `\\u${unit.toString(16).padStart(4, "0")}`;
}

function markOf(character: string): string {
  const code = character.codePointAt(0) as number;
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  if (code === 0x7f) return "␡";
  return `‹U+${code.toString(16).toUpperCase().padStart(4, "0")}›`;
}

import { type Edition, editions } from "../../editions";
import { Choice } from "./choice";

interface EditionChoiceProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly required?: boolean;
  /** Its id, or the value of one of `before`. */
  readonly value: string;
  /** What can be chosen before any edition. */
  readonly before?: readonly { readonly value: string; readonly words: string }[];
  /** Left out, all of them. */
  readonly from?: readonly Pick<Edition, "id" | "title" | "aliases">[];
  readonly onChoose: (value: string) => void;
}

/** One edition. Each option begins with its short name: that is what people type in a list. */
export function EditionChoice({ before = [], from = editions, ...choice }: EditionChoiceProps) {
  const options = from.map(({ id, title, aliases: [short = id] }) => ({
    value: id,
    words: title.startsWith(short) ? title : `${short}: ${title}`,
  }));
  return <Choice {...choice} options={[...before, ...options]} />;
}

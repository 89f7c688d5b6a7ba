import { Field, makeStyles, Select } from "@fluentui/react-components";

// Some options have long names; the pane is narrow.
const useStyles = makeStyles({ select: { minWidth: 0, width: "100%" } });

interface ChoiceProps {
  /** Stands above; where something beside it says so already, `aria-label` says it for others. */
  readonly label?: string;
  readonly "aria-label"?: string;
  /** Stands below. */
  readonly hint?: string | undefined;
  /** Must be chosen. */
  readonly required?: boolean;
  readonly value: string;
  /** Values with their words, or words that are both. */
  readonly options: readonly (string | { readonly value: string; readonly words: string })[];
  readonly onChoose: (value: string) => void;
  readonly size?: "small";
  readonly disabled?: boolean;
}

/** One of several options. */
export function Choice({
  label,
  hint,
  required = false,
  options,
  onChoose,
  ...select
}: ChoiceProps) {
  const { select: className } = useStyles();
  const choice = (
    <Select {...select} className={className} onChange={(_, data) => onChoose(data.value)}>
      {options.map((option) => {
        const { value, words } =
          typeof option === "string" ? { value: option, words: option } : option;
        return (
          <option key={value} value={value}>
            {words}
          </option>
        );
      })}
    </Select>
  );
  return label === undefined ? (
    choice
  ) : (
    <Field label={label} hint={hint ?? null} required={required}>
      {choice}
    </Field>
  );
}

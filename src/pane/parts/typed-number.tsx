import { Field, Input, makeStyles } from "@fluentui/react-components";

const useStyles = makeStyles({ input: { minWidth: 0, width: "100%" } });

interface TypedNumberProps {
  readonly label: string;
  readonly value: string;
  readonly placeholder?: string;
  readonly onType: (value: string) => void;
}

/** A number as it is typed, under its label. */
export function TypedNumber({ label, onType, ...input }: TypedNumberProps) {
  return (
    <Field label={label}>
      <Input
        {...input}
        className={useStyles().input}
        inputMode="decimal"
        onChange={(_, data) => onType(data.value)}
      />
    </Field>
  );
}

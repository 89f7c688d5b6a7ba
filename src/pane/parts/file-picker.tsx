import { Button, type ButtonProps } from "@fluentui/react-components";
import { type ReactNode, useRef } from "react";

interface FilePickerProps extends Pick<ButtonProps, "icon" | "size"> {
  /** What the file is, for those who cannot see the button. */
  readonly label: string;
  /** How its name ends: ".xlsx". */
  readonly accept: string;
  readonly busy: boolean;
  readonly onFile: (file: File) => void;
  readonly children: ReactNode;
}

/** A button that asks for a file; the same file may be chosen again. */
export function FilePicker({ label, accept, busy, onFile, children, ...look }: FilePickerProps) {
  const picker = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button {...look} disabledFocusable={busy} onClick={() => picker.current?.click()}>
        {children}
      </Button>
      <input
        ref={picker}
        type="file"
        accept={accept}
        hidden
        aria-label={label}
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file) onFile(file);
          target.value = "";
        }}
      />
    </>
  );
}

import {
  Button,
  Dialog,
  DialogActions,
  DialogBody,
  DialogContent,
  DialogSurface,
  DialogTitle,
  Field,
  Input,
} from "@fluentui/react-components";
import { useState } from "react";

/** Asks under which name a copy is saved. */
export function NameDialog({
  name: first,
  onSave,
  onDone,
}: {
  name: string;
  onSave: (name: string) => void;
  onDone: () => void;
}) {
  const [name, setName] = useState(first);
  const problem = problemOf(name);
  const save = () => {
    if (problem) return;
    const typed = name.trim();
    onSave(/\.xlsx$/i.test(typed) ? typed : `${typed}.xlsx`);
    onDone();
  };
  return (
    <Dialog open onOpenChange={(_, { open }) => open || onDone()}>
      <DialogSurface>
        <DialogBody>
          <DialogTitle>Save a copy under which name?</DialogTitle>
          <DialogContent>
            <Field label="File name" {...(problem ? { validationMessage: problem } : {})}>
              <Input
                value={name}
                onChange={(_, { value }) => setName(value)}
                onKeyDown={({ key }) => key === "Enter" && save()}
              />
            </Field>
          </DialogContent>
          <DialogActions>
            <Button appearance="primary" onClick={save}>
              Save
            </Button>
            <Button onClick={onDone}>Stay</Button>
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}

function problemOf(name: string): string | null {
  if (name.trim().replace(/\.xlsx$/i, "") === "") return "Type a name.";
  return /[\\/:*?"<>|]/.test(name) ? 'A file name holds none of \\ / : * ? " < > |' : null;
}

import {
  Button,
  Dialog,
  DialogActions,
  DialogBody,
  DialogContent,
  DialogSurface,
  DialogTitle,
} from "@fluentui/react-components";

/** Asks what becomes of unsaved changes before another job takes the place of the open one. */
export function LeaveDialog({
  fileName,
  pending,
  onSave,
  onDone,
}: {
  fileName: string;
  pending: (() => void) | null;
  onSave: () => boolean;
  onDone: () => void;
}) {
  const go = () => {
    pending?.();
    onDone();
  };
  return (
    <Dialog open={pending !== null} onOpenChange={(_, { open }) => open || onDone()}>
      <DialogSurface>
        <DialogBody>
          <DialogTitle>Save the changes to {fileName}?</DialogTitle>
          <DialogContent>
            Another job takes its place. Changes that are not saved as a copy are lost.
          </DialogContent>
          <DialogActions fluid>
            <Button appearance="primary" onClick={() => onSave() && go()}>
              Save a copy, then open
            </Button>
            <Button onClick={go}>Open without saving</Button>
            <Button onClick={onDone}>Stay</Button>
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}

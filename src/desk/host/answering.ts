import type { Events } from "./events";
import type { Desk } from "./objects/desk";
import { runBatch } from "./wire/batch";
import { HostError } from "./wire/errors";
import { type RequestMessage, waitsForCellEdit } from "./wire/messages";
import { isOver } from "./wire/size";

/** Takes the client's requests in their order and sends answers and events. */
export class Answering {
  requestCount = 0;
  isEditing = false;
  /** Requests that wait for the end of cell editing. */
  private readonly waiting: RequestMessage[] = [];
  private readonly run = new RunTracker();
  private isEventDue = false;

  constructor(private readonly send: (text: string) => void) {}

  receive(text: string, desk: () => Desk): void {
    const request = JSON.parse(text) as RequestMessage;
    const isTooLarge = isOver(text);
    // Later, as a host in another process would: the client is still setting itself up.
    setTimeout(() => {
      if (isTooLarge) {
        this.requestCount++;
        this.refuse(
          request.id,
          new HostError("RequestPayloadSizeLimitExceeded", tooLarge("request")),
        );
      } else this.take(request, desk);
    }, 0);
  }

  endEdit(desk: () => Desk): void {
    this.isEditing = false;
    for (const request of this.waiting.splice(0)) this.take(request, desk);
  }

  sendEvents(events: Events): void {
    if (this.isEventDue) return;
    this.isEventDue = true;
    setTimeout(() => {
      this.isEventDue = false;
      const entries = events.take();
      if (entries.length > 0) this.send(JSON.stringify({ type: 3, message: { entries } }));
    }, 0);
  }

  private take(request: RequestMessage, desk: () => Desk): void {
    if (this.isEditing && (request.flags & waitsForCellEdit) !== 0) {
      this.waiting.push(request);
      return;
    }
    this.requestCount++;
    if (this.isEditing) {
      this.refuse(
        request.id,
        new HostError(
          "InvalidOperationInCellEditMode",
          "A cell is being edited. Finish with Enter or Tab, or leave it with Escape, then try again.",
        ),
      );
      return;
    }
    this.answer(request, desk());
  }

  private answer(request: RequestMessage, desk: Desk): void {
    const { book } = desk;
    const { body } = request.message;
    book.cells.origin = "pane";
    book.cells.group = this.run.of(body.Actions);
    const response = runBatch(body, { workbook: desk.workbook(), references: book.references });
    const message = { statusCode: 200, headers: {}, body: response };
    const text = JSON.stringify({ id: request.id, type: 2, message });
    if (isOver(text))
      this.refuse(
        request.id,
        new HostError("ResponsePayloadSizeLimitExceeded", tooLarge("answer")),
      );
    else this.send(text);
  }

  private refuse(id: number, { code, message }: HostError): void {
    const body = { error: { code, message } };
    this.send(JSON.stringify({ id, type: 2, message: { statusCode: 400, headers: {}, body } }));
  }
}

/**
 * Tells which requests belong to the same `Excel.run`: in one run the ids of actions only rise, and
 * every run starts anew.
 */
class RunTracker {
  private lastId = 0;
  private run = 0;

  of(actions: readonly { readonly Id: number }[]): string {
    const first = actions[0]?.Id ?? 0;
    if (first <= this.lastId) this.run++;
    this.lastId = actions.at(-1)?.Id ?? first;
    return `pane ${this.run}`;
  }
}

function tooLarge(what: string): string {
  return `The ${what} is larger than 5 MB; take fewer cells at once.`;
}

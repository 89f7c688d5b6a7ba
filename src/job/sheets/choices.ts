import { ductKinds, duties, editions, roomKinds } from "../../editions";
import { judgedFlows, judgings, works } from "../rules";

const yesNo = ["yes", "no"];

/** Entries that a drop-down list offers, by field; other entries are checked when the job is read. */
export const fieldChoices: Readonly<Record<string, readonly string[]>> = {
  roomKind: roomKinds,
  duty: duties,
  shape: ["round", "rectangular"],
  window: yesNo,
  balanced: yesNo,
  appliance: yesNo,
  whole: yesNo,
  ductKind: ductKinds,
};

/** The same for settings of the Job sheet. */
export const settingChoices: Readonly<Record<string, readonly string[]>> = {
  edition: editions.map((edition) => edition.id),
  method: ["equation", "table"],
  units: ["ip", "si"],
  judging: judgings,
  judgeBy: judgedFlows,
  work: works,
};

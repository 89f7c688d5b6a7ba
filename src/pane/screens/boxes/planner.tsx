import { Button, Field, Input } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { sameName } from "../../../cells";
import { type BoxFace, flowUnit, gapsBetween, type OpeningPlan, type Settings } from "../../../job";
import { count } from "../../model/announce";
import { type PlanWish, planFor, steps, usualWish } from "../../model/cutting-list";
import { CautionBar } from "../../parts/caution-bar";
import { Choice } from "../../parts/choice";
import { constantWords } from "../../parts/format";
import { Panel } from "../../parts/panel";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { TypedNumber } from "../../parts/typed-number";
import { CuttingList } from "./cutting-list";
import { FaceDrawing } from "./face-drawing";
import { ReachChart } from "./reach-chart";

interface PlannerProps {
  readonly settings: Settings;
  /** Boxes that are there already. */
  readonly taken: readonly string[];
}

/** Plans the openings of a new box for a range of flows. */
export function Planner({ settings, taken }: PlannerProps) {
  const shared = useShared();
  const { session, state } = useSession();
  const [wish, setWish] = useState<PlanWish>(usualWish[settings.system]);
  const isTaken = (name: string) => taken.some((box) => sameName(box, name.trim()));
  const freeName = (from: number): string =>
    isTaken(`Box ${from}`) ? freeName(from + 1) : `Box ${from}`;
  const [name, setName] = useState(() => freeName(taken.length + 1));
  const unit = flowUnit(settings.system);
  const length = settings.system === "ip" ? "in" : "mm";
  const planned = useMemo(() => planFor(wish, settings), [wish, settings]);
  const nameProblem =
    name.trim() === "" ? "Name the box." : isTaken(name) ? "This box is already on the sheet." : "";
  const write = async (openings: readonly OpeningPlan[], face: number | undefined) => {
    await session.writeOpenings({
      box: name.trim(),
      constant: settings.constant,
      openings,
      face,
    });
    if (session.state.problem === "") setName(freeName(taken.length + 2));
  };
  const typed = (key: keyof PlanWish, label: string) => (
    <TypedNumber
      label={label}
      value={wish[key]}
      onType={(value) => setWish({ ...wish, [key]: value })}
    />
  );
  return (
    <Panel title="Plan a box">
      <p className={shared.muted}>
        The fewest openings, each used alone, for a range of flows at the job's constant of{" "}
        {constantWords(settings.constant)}.
      </p>
      <CautionBar about={["ladder", "live"]} />
      <div className={shared.pair}>
        {typed("least", `Lowest flow (${unit})`)}
        {typed("most", `Highest flow (${unit})`)}
      </div>
      <Choice
        label="Tool step"
        value={wish.step}
        options={steps[settings.system]}
        onChoose={(step) => setWish({ ...wish, step })}
      />
      <Choice
        label="Shape"
        value={wish.shape}
        options={["round", "square"]}
        onChoose={(shape) => setWish({ ...wish, shape: shape === "square" ? "square" : "round" })}
      />
      <div className={shared.pair}>
        {typed("overlap", "Overlap (%)")}
        {typed("rim", `Rim and bridges (${length})`)}
        {typed("width", `Face, one side (${length})`)}
        {typed("height", `Face, other side (${length})`)}
      </div>
      {"problem" in planned ? (
        <p role="status" className={shared.text}>
          {planned.problem}
        </p>
      ) : (
        <>
          <p className={shared.text}>
            {count(planned.cuts.length, "opening")}. {planned.note}
          </p>
          <div aria-hidden="true">
            <ReachChart
              rows={planned.plan.openings}
              gaps={gapsOf(planned.plan.openings)}
              unit={unit}
            />
          </div>
          {planned.face && planned.plan.holes ? (
            <FaceDrawing
              face={planned.face}
              holes={planned.plan.holes}
              shape={wish.shape}
              middles={planned.middles}
              unit={length}
            />
          ) : null}
          <CuttingList cuts={planned.cuts} system={settings.system} box={name} />
          <Field
            label="Name of the box"
            validationState={nameProblem === "" ? "none" : "error"}
            validationMessage={nameProblem}
          >
            <Input
              className={shared.narrow}
              value={name}
              onChange={(_, data) => setName(data.value)}
            />
          </Field>
          <div>
            <Button
              appearance="primary"
              disabledFocusable={state.busy !== "" || nameProblem !== ""}
              onClick={() => void write(planned.plan.openings, areaOf(planned.face))}
            >
              Write to the Boxes sheet
            </Button>
          </div>
        </>
      )}
    </Panel>
  );
}

const areaOf = (face: BoxFace | undefined) => face && face.width * face.height;

function gapsOf(plan: readonly OpeningPlan[]) {
  return gapsBetween(plan.map(({ reach }) => reach));
}

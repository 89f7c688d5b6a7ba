import { MessageBar, MessageBarBody } from "@fluentui/react-components";
import { lazy, Suspense } from "react";
import { shown } from "../../../cells";
import { flowUnit, mostOfFace, type Settings, unitOf } from "../../../job";
import { type BoxView, tooLargeFor } from "../../model/boxes-view";
import type { ProofView } from "../../model/proof-view";
import { between, constantWords, orDash } from "../../parts/format";
import { Panel } from "../../parts/panel";
import { Picture } from "../../parts/picture";
import { useShared } from "../../parts/styles";
import { Table } from "../../parts/table";
import { OpeningDrawing } from "./opening-drawing";
import { ReachChart } from "./reach-chart";

// Its picture brings a library along that a job without paired readings has no use for.
const ProofSection = lazy(() =>
  import("./proof-section").then((part) => ({ default: part.ProofSection })),
);

interface BoxCardProps {
  readonly box: BoxView;
  /** Undefined where the Pairs sheet has no pairs of this box. */
  readonly proof: ProofView | undefined;
  readonly settings: Settings;
  /** Area of the box face in the job's unit, or NaN. */
  readonly face: number;
}

export function BoxCard({ box, proof, settings, face }: BoxCardProps) {
  const shared = useShared();
  const unit = flowUnit(settings.system);
  const area = unitOf("opening", settings.system);
  const gapWords = box.gaps.map(({ lowest, highest }) => between(lowest, highest, unit));
  const tooLarge = tooLargeFor(box.openings, face);
  return (
    <Panel title={box.name}>
      <p className={shared.muted}>Constant {constantWords(box.constant)}</p>
      {box.openings.length === 0 ? (
        <p className={shared.text}>No opening of this box has an area.</p>
      ) : (
        <Picture
          title="Openings, reach"
          summary={`Each opening alone, between ${shown(settings.low)} and ${shown(settings.high)} Pa. ${
            gapWords.length > 0 ? `Unread: ${gapWords.join("; ")}.` : "No gap between openings."
          }`}
          twin={<OpeningTable box={box} settings={settings} />}
        >
          <OpeningDrawing openings={box.openings} />
          <ReachChart rows={box.openings} gaps={box.gaps} unit={unit} />
        </Picture>
      )}
      {tooLarge.length > 0 ? (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            {tooLarge
              .map(({ label, share }) => `${label} is ${Math.round(share * 100)} %`)
              .join(", ")}{" "}
            of the box face ({shown(face)} {area}). Above {mostOfFace * 100} % the air's approach
            raises the flow by more than 3.3 %: use a larger box, or a constant found for this
            opening.
          </MessageBarBody>
        </MessageBar>
      ) : null}
      {proof ? (
        <Suspense fallback={null}>
          <ProofSection view={proof} settings={settings} />
        </Suspense>
      ) : null}
    </Panel>
  );
}

function OpeningTable({ box, settings: { system } }: Pick<BoxCardProps, "box" | "settings">) {
  return (
    <Table
      caption={`Openings of ${box.name}`}
      rows={box.openings}
      columns={[
        { title: "Opening", cell: ({ label }) => label },
        { title: `Size (${unitOf("length", system)})`, cell: sizeWords },
        {
          title: `Area (${unitOf("opening", system)})`,
          isNumber: true,
          cell: ({ area }) => orDash(area),
        },
        {
          title: `Reach (${flowUnit(system)})`,
          isNumber: true,
          cell: ({ reach }) => `${shown(reach.lowest)} to ${shown(reach.highest)}`,
        },
      ]}
    />
  );
}

function sizeWords({ shape, width, height, count }: BoxView["openings"][number]): string {
  if (!(width > 0)) return "not given";
  const size = shape === "round" ? `round ${shown(width)}` : `${shown(width)} × ${shown(height)}`;
  return count > 1 ? `${count} of ${size}` : size;
}

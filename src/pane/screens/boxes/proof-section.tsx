import { mergeClasses } from "@fluentui/react-components";
import {
  CheckmarkCircle20Filled,
  CircleHint20Regular,
  ErrorCircle20Filled,
} from "@fluentui/react-icons";
import { useCallback } from "react";
import { shown } from "../../../cells";
import { flowUnit, type Settings } from "../../../job";
import type { CoverageView, ProofView } from "../../model/proof-view";
import { Bar } from "../../parts/bar";
import { Facts } from "../../parts/facts";
import { Picture } from "../../parts/picture";
import { PlotBox } from "../../parts/plot-box";
import { useShared } from "../../parts/styles";
import { Table } from "../../parts/table";
import { openingLegend, proofPlot } from "./proof-plot";

const icons = {
  proved: CheckmarkCircle20Filled,
  "not proved": ErrorCircle20Filled,
  "too few pairs": CircleHint20Regular,
} as const satisfies Record<ProofView["verdict"], unknown>;

const looks = {
  proved: "good",
  "not proved": "bad",
  "too few pairs": "quiet",
} as const satisfies Record<ProofView["verdict"], unknown>;

interface ProofSectionProps {
  readonly view: ProofView;
  readonly settings: Settings;
}

/** What the paired readings of a box show, and what they do not. */
export function ProofSection({ view, settings }: ProofSectionProps) {
  const shared = useShared();
  const unit = flowUnit(settings.system);
  const draw = useCallback((width: number) => proofPlot(view, unit, width), [view, unit]);
  // A weak reference says nothing against the box.
  const look = view.isWeak && view.verdict === "not proved" ? "too few pairs" : view.verdict;
  const Icon = icons[look];
  return (
    <div className={shared.ruled}>
      <h3 className={shared.subheading}>
        <span className={shared.withIcon}>
          <Icon className={shared[looks[look]]} aria-hidden />
          Proof: {view.verdict}
        </span>
      </h3>
      <ul className={shared.bullets}>
        {view.reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
      <Facts facts={view.figures} />
      <Coverage coverage={view.coverage} settings={settings} />
      <Picture
        title="Box against reference"
        summary={`The full line is equality, the broken ones ±${shown(view.requirement)} %. Openings: ${openingLegend(view.pairs)}.`}
        twin={<PairTable view={view} unit={unit} />}
      >
        <PlotBox draw={draw} />
      </Picture>
      <p className={shared.muted}>
        This holds for these openings and pressures, as the box was on that day. A box is never
        proved better than its reference.
      </p>
    </div>
  );
}

interface CoverageProps {
  readonly coverage: readonly CoverageView[];
  readonly settings: Settings;
}

function Coverage({ coverage, settings: { low, high } }: CoverageProps) {
  const shared = useShared();
  return (
    <div className={shared.tight}>
      <p className={shared.muted}>
        What the pairs cover of the window from {shown(low)} to {shown(high)} Pa. Nothing is proved
        outside it.
      </p>
      <ul className={mergeClasses(shared.plainList, shared.stack)}>
        {coverage.map(({ opening, from, to, words }) => (
          <li key={opening}>
            {opening}: {words}
            <Bar from={from} to={to} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function PairTable({ view, unit }: { view: ProofView; unit: string }) {
  const shared = useShared();
  return (
    <Table
      caption={`Paired readings of ${view.box}`}
      rows={view.pairs}
      columns={[
        { title: "Opening", cell: ({ opening }) => opening },
        { title: "Pa", isNumber: true, cell: ({ pressure }) => shown(pressure) },
        { title: `Box (${unit})`, isNumber: true, cell: ({ box }) => shown(box) },
        { title: `Ref. (${unit})`, isNumber: true, cell: ({ reference }) => shown(reference) },
        {
          title: "Error",
          isNumber: true,
          cell: ({ difference }) => <span className={shared.whole}>{difference}</span>,
        },
      ]}
    />
  );
}

import { Button, Field, Select } from "@fluentui/react-components";
import { useCallback, useMemo, useState } from "react";
import { shown } from "../../../cells";
import { flowsOf, type JobCheck } from "../../../job";
import {
  countReadings,
  type FanVerdict,
  fanReadings,
  filterReadings,
  type ReadingFilter,
  readingFilters,
} from "../../model/readings-view";
import { rowsAt } from "../../model/rows-at";
import { CautionBar } from "../../parts/caution-bar";
import { Picture } from "../../parts/picture";
import { PlotBox } from "../../parts/plot-box";
import { useSession } from "../../parts/session-context";
import { useShared } from "../../parts/styles";
import { flowPlot, pressurePlot } from "./plots";
import { ReadingTable } from "./reading-table";
import { SpreadSection } from "./spread-section";
import { verdictLook } from "./verdict-look";

const page = 40;
/** What was measured against what is asked for, fan by fan and all together. */
export function ReadingsScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  const { job } = check;
  const { settings } = job;
  const { selection } = useSession().state;
  const fan = useMemo(
    () => (selection ? rowsAt(job, selection.sheet, selection.row).fan : undefined),
    [job, selection],
  );
  const [filter, setFilter] = useState<ReadingFilter>("all");
  const [start, setStart] = useState(0);
  const all = useMemo(() => fanReadings(job), [job]);
  const counts = useMemo(() => countReadings(all), [all]);
  const chosen = useMemo(() => filterReadings(all, filter), [all, filter]);
  const first = start < chosen.length ? start : 0;
  const fans = useMemo(() => chosen.slice(first, first + page), [chosen, first]);
  const { unit } = flowsOf(job);
  const drawFlow = useCallback((width: number) => flowPlot(fans, unit, width), [fans, unit]);
  // Each reading of a mean has a pressure of its own, the mean has none.
  const read = useMemo(
    () => (filter === "all" ? all : chosen).filter(({ pressure }) => pressure > 0),
    [all, chosen, filter],
  );
  const drawPressure = useCallback(
    (width: number) => pressurePlot(read, settings, unit, width),
    [read, settings, unit],
  );
  const legend = Object.entries(verdictLook)
    .filter(([verdict]) => verdict !== "not measured" && counts[verdict as FanVerdict] > 0)
    .map(([verdict, { sign }]) => `${sign} ${verdict}`)
    .join(", ");
  const judged =
    settings.judgeBy === "measured" ? "" : `Verdicts are on the flow judged: ${settings.judgeBy}.`;
  const outside = read.filter((fan) => fan.status && fan.status !== "in range");
  if (all.length === 0)
    return (
      <div className={shared.screen}>
        <p className={shared.text}>
          {job.fans
            ? `No fan has been typed on sheet ${job.fans.table.name} yet. Its flow, spread and range are shown here once it has.`
            : "No sheet with fans was found."}
        </p>
      </div>
    );
  return (
    <div className={shared.screen}>
      <CautionBar about={["ladder", "live"]} />
      {fan === undefined ? (
        <p className={shared.muted}>
          Select a cell in the row of a fan, or a fan in the numbers below, to see the spread of its
          flow.
        </p>
      ) : (
        <SpreadSection job={job} fan={fan} />
      )}
      <Field label="Fans shown" orientation="horizontal">
        <Select
          value={filter}
          onChange={(_, data) => {
            setFilter(data.value as ReadingFilter);
            setStart(0);
          }}
        >
          {readingFilters.map((entry) => (
            <option key={entry} value={entry}>
              {entry} ({counts[entry]})
            </option>
          ))}
        </Select>
      </Field>
      {chosen.length === 0 ? (
        <p className={shared.text}>None.</p>
      ) : (
        <>
          <Picture
            title="Flow against required"
            summary={`The bar across is the required rate, the thin line the spread of the readings. ${legend}. ${judged}`}
            twin={<ReadingTable fans={fans} unit={unit} />}
          >
            <PlotBox draw={drawFlow} />
          </Picture>
          {chosen.length > page ? (
            <nav className={shared.spread} aria-label="Pages of fans">
              <Button
                size="small"
                disabledFocusable={first === 0}
                onClick={() => setStart(first - page)}
              >
                Before
              </Button>
              <span className={shared.muted}>
                {first + 1} to {Math.min(first + page, chosen.length)} of {chosen.length}
              </span>
              <Button
                size="small"
                disabledFocusable={first + page >= chosen.length}
                onClick={() => setStart(first + page)}
              >
                After
              </Button>
            </nav>
          ) : null}
          {read.length > 0 ? (
            <Picture
              title="Flow against pressure"
              summary={`The window of ${shown(settings.low)} to ${shown(settings.high)} Pa is shaded; ${outside.length} of ${read.length} readings stand outside it.`}
              twin={<ReadingTable fans={outside} unit={unit} />}
            >
              <PlotBox draw={drawPressure} />
            </Picture>
          ) : null}
        </>
      )}
    </div>
  );
}

import { findDuct, findFan } from "../../editions";
import type { FanRows, Job, Table } from "../read";
import { designMatch, leastEfficacy, longestDuct, loudest, makeupAir, type Ruling } from "../rules";
import { unitOf } from "../sheets";
import { shown } from "../words";
import type { Check } from "./check";

/** What a fan is, apart from what it moves: efficacy, sound, duct, makeup air, its design flow. */
export const checkEquipment: Check = (job, report) => {
  const { fans, settings } = job;
  if (!fans) return;
  const { table } = fans;
  const { system } = settings;
  const unit = unitOf("flow", system);
  for (let i = 0; i < fans.length; i++) {
    if (fans.isAbsent(i)) continue;
    const about = fans.label(i);
    const rated = table.number("rated", i);
    const efficacy = efficacyAsked(job, fans, i);
    const own = rated / table.number("watts", i);
    if (efficacy && own < efficacy.value)
      report.at("efficacy-short", table, "watts", i, about, {
        what: `${shown(own)} ${unit} for each watt, where ${settings.equipment} asks for ${shown(efficacy.value)}`,
        effect: `The fan uses more power than ${where(efficacy)} lets it.`,
        mend: "Compare watts and rated flow with the nameplate; choose another fan where they are right.",
      });
    const sound = soundAllowed(job, fans, i);
    if (sound && typeof sound.value === "number" && table.number("sones", i) > sound.value)
      report.at("sound-over", table, "sones", i, about, {
        what: `${shown(table.number("sones", i))} sones, where ${shown(sound.value)} is the most (${sound.working})`,
        effect: `The fan is louder than ${where(sound)} lets it: people switch such fans off.`,
        mend: "Compare with the fan's certified rating; choose a quieter fan where it is right.",
      });
    // A measured flow waives the table: only a fan without one is held against it.
    if (Number.isNaN(fans.flow[i])) checkDuct(job, table, i, about, rated, report);
    const design = table.number("design", i);
    if (settings.programme !== "" && design > 0 && (fans.flow[i] as number) >= 0) {
      const match = attempt(() =>
        designMatch(settings.programme, design, fans.flow[i] as number, system),
      );
      if (match && match.value !== "matches")
        report.at("design-differs", table, "design", i, about, {
          what: `${shown(fans.flow[i] as number)} ${unit} is ${match.value} against the design of ${shown(design)}: ${shown(match.lowest)} to ${shown(match.highest)} would match`,
          effect: `${settings.programme} asks for a match both ways: too much air fails as well.`,
          mend: "Set the fan's speed, mend its duct, or have the designer change the design flow.",
        });
    }
    checkMakeup(job, fans, i, about, report);
  }
};

type Reporter = Parameters<Check>[1];

function checkDuct(
  job: Job,
  table: Table,
  i: number,
  about: string,
  rated: number,
  report: Reporter,
): void {
  const { ducts, system } = job.settings;
  const length = table.number("ductLength", i);
  if (ducts === "" || !(length > 0) || !(rated > 0)) return;
  const elbows = table.number("elbows", i);
  const ruling = attempt(() =>
    longestDuct(
      ducts,
      {
        kind: findDuct(table.text("ductKind", i)),
        diameter: table.number("ductDiameter", i),
        ratedFlow: rated,
        elbows: Number.isNaN(elbows) ? 0 : elbows,
      },
      system,
    ),
  );
  if (!ruling || ruling.value === "no limit") return;
  if (typeof ruling.value === "number" && length <= ruling.value) return;
  const most = ruling.value === "not allowed" ? ruling.value : `${shown(ruling.value)} at most`;
  report.at("duct-over", table, "ductLength", i, about, {
    what: `${shown(length)} ${unitOf("distance", system)} of duct, where ${where(ruling)} says: ${most} (${ruling.working})`,
    effect: "Without a measured flow the table decides, and the duct does not meet it.",
    mend: "Measure the installed flow, which waives the table; or shorten or widen the duct.",
  });
}

function checkMakeup(job: Job, fans: FanRows, i: number, about: string, report: Reporter): void {
  const { ducts, system } = job.settings;
  const kind = fans.room(i);
  if (ducts === "" || !("value" in kind) || !kind.value.startsWith("kitchen")) return;
  const measured = fans.flow[i] as number;
  const flow = Math.max(...[measured, fans.table.number("rated", i)].filter((value) => value > 0));
  if (!(flow > 0) || !Number.isFinite(flow)) return;
  const ruling = attempt(() => makeupAir(ducts, flow, hasAppliance(job, fans, i), system));
  if (ruling?.value === "needed")
    report.at("makeup-air", fans.table, "rated", i, about, {
      what: `${shown(flow)} ${unitOf("flow", system)} of exhaust needs makeup air (${where(ruling)})`,
      effect:
        "Such a fan can draw flue gas back into the dwelling. The local authority and a licensed person decide.",
      mend: "Show the makeup air in the note, or have it provided.",
    });
}

function hasAppliance(job: Job, fans: FanRows, i: number): boolean | undefined {
  const { dwellings } = job.tables;
  const name = fans.table.text("dwelling", i).toLowerCase();
  const row = dwellings?.texts("dwelling").findIndex((entry) => entry.toLowerCase() === name) ?? -1;
  const said = row < 0 ? "" : (dwellings?.text("appliance", row).toLowerCase() ?? "");
  return said === "" ? undefined : said === "yes";
}

function efficacyAsked(job: Job, fans: FanRows, i: number): Ruling<number> | undefined {
  const { equipment, system } = job.settings;
  const kind = fans.table.text("fanKind", i);
  if (equipment === "" || kind === "" || !fans.table.has("watts")) return undefined;
  return attempt(() =>
    leastEfficacy(equipment, findFan(kind), fans.table.number("rated", i), system),
  );
}

function soundAllowed(job: Job, fans: FanRows, i: number): Ruling<number | "no limit"> | undefined {
  const { edition, system } = job.settings;
  const duty = fans.duty(i);
  if (!edition || !fans.table.has("sones") || !("value" in duty)) return undefined;
  const rated = fans.table.number("rated", i);
  return attempt(() =>
    loudest(edition.id, duty.value, Number.isNaN(rated) ? undefined : rated, false, system),
  );
}

const where = ({ source }: Ruling<unknown>) =>
  `${source.work}, ${source.clause}${source.mark === "from memory" ? " (from memory, verify)" : ""}`;

/** A rule that does not apply, or lacks what it needs, says nothing here. */
function attempt<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch {
    return undefined;
  }
}

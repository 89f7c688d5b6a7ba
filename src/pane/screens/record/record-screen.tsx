import type { JobCheck } from "../../../job";
import { useShared } from "../../parts/styles";
import { BringPanel } from "./bring-panel";
import { ComparePanel } from "./compare-panel";
import { CopiesPanel } from "./copies-panel";
import { EstimatePanel } from "./estimate-panel";
import { ProvenancePanel } from "./provenance-panel";
import { WritePanel } from "./write-panel";

/** What is kept of a job: records to sign, what changed since an older file, copies to hand on. */
export function RecordScreen({ check }: { check: JobCheck }) {
  const shared = useShared();
  return (
    <div className={shared.screen}>
      <EstimatePanel job={check.job} />
      <WritePanel check={check} />
      <ComparePanel check={check} />
      <CopiesPanel />
      <BringPanel />
      <ProvenancePanel check={check} />
    </div>
  );
}

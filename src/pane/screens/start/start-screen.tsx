import { lazy, Suspense } from "react";
import { loadSelfTest } from "../../../excel";
import { cautions } from "../../model/cautions";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { InsertFunction } from "./insert-function";
import { NewJob } from "./new-job";
import { SelfTest } from "./self-test";

const LoadedTest = lazy(async () => {
  const kit = await loadSelfTest();
  return { default: () => <SelfTest kit={kit} /> };
});

/** A new job, a function at the cell, and what to be careful of. */
export function StartScreen() {
  const shared = useShared();
  return (
    <div className={shared.screen}>
      <NewJob />
      <InsertFunction />
      <Panel title="Be careful of">
        <dl className={shared.stack}>
          {cautions.map(({ key, title, text }) => (
            <div key={key}>
              <dt className={shared.subheading}>{title}</dt>
              <dd className={shared.text}>{text}</dd>
            </div>
          ))}
        </dl>
        <p className={shared.muted}>
          Local code and licensed practice come before anything said here.
        </p>
      </Panel>
      <Fold title="Test in this Excel">
        <Suspense fallback={null}>
          <LoadedTest />
        </Suspense>
      </Fold>
    </div>
  );
}

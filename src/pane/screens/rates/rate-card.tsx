import { MessageBar, MessageBarBody } from "@fluentui/react-components";
import type { RateView } from "../../model/rates-view";
import { Facts } from "../../parts/facts";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { Working } from "./working";

/** What a room asks of its fan. */
export function RateCard({ view }: { view: RateView }) {
  const shared = useShared();
  const { outcome } = view;
  return (
    <Panel title={view.title}>
      {"problem" in outcome ? (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>{outcome.problem}</MessageBarBody>
        </MessageBar>
      ) : (
        <p className={shared.big}>Required {outcome.rate}</p>
      )}
      {view.measured === "" ? null : <p className={shared.text}>{view.measured}</p>}
      <Facts facts={view.given} />
      {"problem" in outcome ? null : <Working lines={outcome.working} clauses={[outcome.clause]} />}
    </Panel>
  );
}

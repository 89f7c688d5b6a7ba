import {
  FluentProvider,
  makeStyles,
  Tab,
  TabList,
  teamsHighContrastTheme,
  tokens,
  webDarkTheme,
  webLightTheme,
} from "@fluentui/react-components";
import { Suspense, useState } from "react";
import { type ScreenKey, screens } from "./model/screens";
import { firstWalk } from "./model/trace-walk";
import { NeedCheck } from "./parts/need-check";
import { ScreenGuard } from "./parts/screen-guard";
import { useSession } from "./parts/session-context";
import { StatusLine } from "./parts/status-line";
import { useShared } from "./parts/styles";
import { useTheme } from "./parts/use-theme";
import { CheckScreen, type CheckScreenProps, firstView } from "./screens/check/check-screen";
import {
  BoxesScreen,
  FitScreen,
  RatesScreen,
  ReadingsScreen,
  RecordScreen,
  StartScreen,
  TraceScreen,
} from "./screens/lazy";
import type { TraceScreenProps } from "./screens/trace/trace-screen";

const themes = { light: webLightTheme, dark: webDarkTheme, contrast: teamsHighContrastTheme };

const useStyles = makeStyles({
  pane: {
    display: "flex",
    flexDirection: "column",
    height: "100%",
    minHeight: 0,
    lineHeight: tokens.lineHeightBase300,
    overflowWrap: "anywhere",
  },
  tabs: {
    flexWrap: "wrap",
    flexShrink: 0,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  tab: { paddingLeft: "7px", paddingRight: "7px" },
  // What is out of sight stays within the screen, or it would make the page itself longer.
  screen: {
    position: "relative",
    flex: "1 1 0",
    minHeight: 0,
    overflowY: "auto",
    scrollbarGutter: "stable",
  },
});

/** The task pane: its screens over one session. */
export function Pane() {
  const styles = useStyles();
  const shared = useShared();
  const theme = useTheme();
  const { session, state } = useSession();
  const shown = state.screen;
  const [view, setView] = useState(firstView);
  const [walk, setWalk] = useState(firstWalk);
  const title = screens.find((screen) => screen.key === shown)?.title;
  return (
    <FluentProvider theme={themes[theme]} className={styles.pane}>
      <TabList
        size="small"
        className={styles.tabs}
        aria-label="Screens"
        selectedValue={shown}
        onTabSelect={(_, data) => session.show(data.value as ScreenKey)}
      >
        {screens.map(({ key, title }) => (
          <Tab
            key={key}
            value={key}
            id={`fanrow-tab-${key}`}
            aria-controls="fanrow-screen"
            className={styles.tab}
          >
            {title}
          </Tab>
        ))}
      </TabList>
      {/* A screen may hold no control at all, so it takes the keyboard itself for scrolling. */}
      <div
        role="tabpanel"
        id="fanrow-screen"
        key={shown}
        className={styles.screen}
        aria-labelledby={`fanrow-tab-${shown}`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolled by keyboard
        tabIndex={0}
      >
        <h2 className={shared.unseen}>{title}</h2>
        <ScreenGuard>
          <Suspense fallback={null}>
            <Screen shown={shown} view={view} onView={setView} walk={walk} onWalk={setWalk} />
          </Suspense>
        </ScreenGuard>
      </div>
      <StatusLine />
    </FluentProvider>
  );
}

interface ScreenProps extends CheckScreenProps, Omit<TraceScreenProps, "check"> {
  readonly shown: ScreenKey;
}

function Screen({ shown, view, onView, walk, onWalk }: ScreenProps) {
  switch (shown) {
    case "check":
      return <CheckScreen view={view} onView={onView} />;
    case "fit":
      return <NeedCheck>{(check) => <FitScreen check={check} />}</NeedCheck>;
    case "boxes":
      return <NeedCheck>{(check) => <BoxesScreen check={check} />}</NeedCheck>;
    case "readings":
      return <NeedCheck>{(check) => <ReadingsScreen check={check} />}</NeedCheck>;
    case "rates":
      return <NeedCheck>{(check) => <RatesScreen check={check} />}</NeedCheck>;
    case "trace":
      return (
        <NeedCheck>
          {(check) => <TraceScreen check={check} walk={walk} onWalk={onWalk} />}
        </NeedCheck>
      );
    case "record":
      return <NeedCheck>{(check) => <RecordScreen check={check} />}</NeedCheck>;
    case "start":
      return <StartScreen />;
  }
}

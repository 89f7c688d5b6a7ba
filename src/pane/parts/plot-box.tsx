import { makeStyles, mergeClasses } from "@fluentui/react-components";
import { useLayoutEffect } from "react";
import { visible } from "../../cells";
import { useChartColours } from "./chart-colours";
import { useWidth } from "./use-width";

const useStyles = makeStyles({
  box: { minHeight: "120px", "& svg": { display: "block", overflow: "visible" } },
});

interface PlotBoxProps {
  /** Draws for a width; must be kept from one render to the next while nothing changes. */
  readonly draw: (width: number) => Element;
}

/** Holds a drawing, whose texts may come from cells, and draws it again when the pane changes its width. */
export function PlotBox({ draw }: PlotBoxProps) {
  const { box } = useStyles();
  const { chart } = useChartColours();
  const [element, width] = useWidth<HTMLDivElement>(288);
  useLayoutEffect(() => {
    const drawn = draw(width);
    for (const text of drawn.querySelectorAll("text, title, tspan"))
      if (text.childElementCount === 0) text.textContent = visible(text.textContent ?? "");
    element.current?.replaceChildren(drawn);
  }, [element, draw, width]);
  return <div ref={element} className={mergeClasses(box, chart)} />;
}

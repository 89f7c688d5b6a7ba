import { type ReactNode, useId } from "react";
import { useShared } from "./styles";

interface PanelProps {
  readonly title: string;
  readonly children: ReactNode;
}

/** A part of a screen in a frame of its own, under its title. */
export function Panel({ title, children }: PanelProps) {
  const shared = useShared();
  const id = useId();
  return (
    <section className={shared.panel} aria-labelledby={id}>
      <h3 id={id} className={shared.subheading}>
        {title}
      </h3>
      {children}
    </section>
  );
}

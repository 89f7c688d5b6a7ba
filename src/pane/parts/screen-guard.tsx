import { Component, type ReactNode } from "react";

interface GuardProps {
  readonly children: ReactNode;
}

/** Keeps a screen that cannot be drawn from taking the others with it. */
export class ScreenGuard extends Component<GuardProps, { readonly problem: string }> {
  override state = { problem: "" };

  static getDerivedStateFromError(error: unknown): { problem: string } {
    return { problem: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { problem } = this.state;
    if (problem === "") return this.props.children;
    return (
      <p role="alert">
        This screen could not be drawn: {problem}. The others still work; check the workbook again
        and come back.
      </p>
    );
  }
}

/** How a cell's format lets it look, as far as the page shows it. Colours are "#RRGGBB". */
export interface CellLook {
  readonly bold: boolean;
  readonly italic: boolean;
  readonly fill: string | null;
  readonly color: string | null;
  readonly align: "left" | "center" | "right" | null;
  readonly wrap: boolean;
  /** A number is shown with the digits it has, and not by a format. */
  readonly isGeneral: boolean;
}

export const plainLook: CellLook = {
  bold: false,
  italic: false,
  fill: null,
  color: null,
  align: null,
  wrap: false,
  isGeneral: true,
};

import {
  CellApiModule,
  ClientSideRowModelApiModule,
  ClientSideRowModelModule,
  ColumnApiModule,
  CustomEditorModule,
  ModuleRegistry,
  PinnedRowModule,
  RenderApiModule,
  RowApiModule,
  ScrollApiModule,
} from "ag-grid-community";

/** The parts of the grid library that the page uses. */
export function registerModules(): void {
  ModuleRegistry.registerModules([
    CellApiModule,
    ClientSideRowModelApiModule,
    ClientSideRowModelModule,
    ColumnApiModule,
    CustomEditorModule,
    PinnedRowModule,
    RenderApiModule,
    RowApiModule,
    ScrollApiModule,
  ]);
}

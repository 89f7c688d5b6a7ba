// The rooms of the house and the doors between them. Imports point one way: a room may import
// only what is listed for it here. DEVELOPERS.md says what each room holds.
const doors = {
  "src/formulas": [],
  "src/units": [],
  "src/workbook": [],
  "src/algebra": ["src/formulas"],
  "src/editions": ["src/formulas"],
  "src/job": ["src/algebra", "src/editions", "src/units", "src/formulas"],
  functions: ["src/job", "src/algebra", "src/editions", "src/formulas", "src/units"],
  "src/excel": ["src/job"],
  "src/pane": ["src/job", "src/excel"],
  "src/sheet": ["src/workbook", "functions"],
  "src/desk": ["src/sheet", "src/workbook", "src/pane", "functions"],
  "src/command": ["src/sheet", "src/job", "src/workbook", "functions"],
  "src/site": ["functions", "src/formulas", "src/algebra", "src/pane", "src/desk"],
  workbooks: ["src/workbook", "src/sheet", "src/job", "functions"],
};

const roomRules = Object.entries(doors).map(([room, allowed]) => ({
  name: `room ${room}`,
  comment: `${room} may import only: ${allowed.join(", ") || "nothing of ours"}`,
  severity: "error",
  from: { path: `^${room}/` },
  to: {
    path: "^(src|functions|workbooks|tests)/",
    pathNot: [room, ...allowed].map((name) => `^${name}/`),
  },
}));

module.exports = {
  forbidden: [
    ...roomRules,
    {
      name: "every folder under src is a room",
      severity: "error",
      from: { path: "^src/", pathNot: Object.keys(doors).map((name) => `^${name}/`) },
      to: {},
    },
    {
      name: "rooms are entered by their index",
      comment: "Import another room through its index.ts, so that its inside stays free to change.",
      severity: "error",
      from: { path: "^(src/[^/]+|functions|workbooks)/" },
      to: {
        path: "^(src/[^/]+|functions)/",
        pathNot: ["^$1/", "/index\\.ts$", "^functions/functions\\.json$"],
      },
    },
    { name: "no cycles", severity: "error", from: {}, to: { circular: true } },
    {
      name: "nothing unresolved",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "shipped code uses no development package",
      severity: "error",
      from: { path: "^(src/(?!site)|functions/(?!metadata))" },
      to: { dependencyTypes: ["npm-dev"] },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    combinedDependencies: false,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "default"],
    },
  },
};

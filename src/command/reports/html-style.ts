/** The look of the report page: readable on screen in light and dark, and on paper. */
export const style = `
:root { color-scheme: light dark; --ink: #1d2524; --paper: #fff; --line: #c9d3d1; --soft: #eef3f1;
  --wrong: #a8201a; --doubtful: #7a5200; --missing: #14538a; --result: #553a8a; }
@media (prefers-color-scheme: dark) { :root { --ink: #e6eceb; --paper: #151b1a; --line: #3b4745;
  --soft: #1f2827; --wrong: #ff9a92; --doubtful: #f0c05a; --missing: #8cc4f5; --result: #c3b0f0; } }
body { font: 15px/1.45 system-ui, sans-serif; color: var(--ink); background: var(--paper);
  margin: 0 auto; padding: 1rem 1.5rem; max-width: 90rem; }
h1 { font-size: 1.5rem; margin: 0; } h2 { font-size: 1.15rem; margin: 2rem 0 .25rem; overflow-wrap: anywhere; }
p { margin: .25rem 0; } .counts { font-weight: 600; }
.provenance { font-size: .85rem; margin-top: .75rem; overflow-wrap: anywhere; }
.kinds { columns: 20rem; padding-left: 1.2rem; }
table { border-collapse: collapse; width: 100%; } caption { text-align: left; font-weight: 600; padding: .5rem 0; }
th, td { border-bottom: 1px solid var(--line); padding: .35rem .6rem .35rem 0; text-align: left; vertical-align: top; }
thead th { background: var(--soft); position: sticky; top: 0; } tbody th { white-space: nowrap; font-weight: 600; }
.wrong { color: var(--wrong); } .doubtful { color: var(--doubtful); } .missing { color: var(--missing); } .result { color: var(--result); }
footer { margin-top: 2rem; color: var(--ink); border-top: 1px solid var(--line); }
@media (max-width: 40rem) { thead { position: absolute; clip-path: inset(50%); } tr, td, tbody th { display: block; border: 0; padding: .1rem 0; }
  tr { border-bottom: 1px solid var(--line); padding: .5rem 0; } }
@media print { thead th { position: static; } tr { break-inside: avoid; } }
`;

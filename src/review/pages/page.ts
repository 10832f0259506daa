/** The page around a report: one file, no script, no network, for screen and paper. */
import { html, type Markup, raw } from "./html.ts";

const STYLE = `
:root { color-scheme: light dark; --paper: #fcfbf8; --ink: #211e1a; --soft: #595247;
  --rule: #cfc8ba; --band: #ece7dc; --done: #2c6e5d; --plan: #857b6b; --gap: #9a4a1f;
  --mark: #9c2716; --good: #1f6b46; --bad: #9c2716; }
@media (prefers-color-scheme: dark) { :root { --paper: #1b1a18; --ink: #efebe3; --soft: #b9b1a3;
  --rule: #4a463f; --band: #2a2825; --done: #5db59e; --plan: #9c9384; --gap: #e39a6a;
  --mark: #ff9b88; --good: #7fd0a4; --bad: #ff9b88; } }
@media print { :root { color-scheme: light; --paper: #fff; --ink: #000; --soft: #333;
  --rule: #999; --band: #eee; --done: #2c6e5d; --plan: #666; --gap: #7a3a18; --mark: #8c1e10;
  --good: #14532f; --bad: #8c1e10; } }
@page { margin: 14mm; }
body { margin: 0; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, "Liberation Sans", sans-serif; }
main { max-width: 62rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .3rem; }
h2 { font-size: 1.15rem; margin: 2rem 0 .5rem; border-bottom: 1px solid var(--rule); }
h3 { font-size: 1rem; margin: 1rem 0 .3rem; }
p, ul { margin: .4rem 0; } .soft { color: var(--soft); }
body { overflow-wrap: anywhere; }
dl { display: grid; grid-template-columns: max-content minmax(0, 1fr); gap: .15rem 1rem;
  margin: 1rem 0; }
dt { color: var(--soft); } dd { margin: 0; }
.counts { display: flex; flex-wrap: wrap; gap: .4rem 1.6rem; } .counts dd { font-weight: 600; }
.verdict { border-left: .4rem solid var(--bad); background: var(--band); padding: .6rem .9rem; }
.verdict.good { border-color: var(--good); } .verdict strong { font-size: 1.1rem; }
figure { margin: .5rem 0 1.2rem; } figcaption { color: var(--soft); font-size: .9rem; }
table { border-collapse: collapse; width: 100%; font-size: .92rem; margin: .5rem 0;
  overflow-wrap: normal; } .long { overflow-wrap: anywhere; }
caption { text-align: left; color: var(--soft); padding: .2rem 0; }
th, td { text-align: left; vertical-align: top; padding: .25rem .6rem .25rem 0;
  border-bottom: 1px solid var(--rule); font-variant-numeric: tabular-nums; }
tbody th { font-weight: 600; } .whole { white-space: nowrap; }
svg { display: block; width: 100%; overflow: visible; }
svg text { fill: var(--soft); font-size: 13px; }
.chart { position: relative; --names: 12rem; } .ticked { padding-top: 2.2rem; }
.row { display: grid; grid-template-columns: var(--names) minmax(0, 1fr); gap: 0 .6rem;
  align-items: center; position: relative; padding: .08rem 0; }
.row p { margin: 0; font-size: .85rem; line-height: 1.3; text-align: right; }
.tall p { grid-column: 1 / 3; text-align: left; margin-top: .8rem; } .tall svg { grid-column: 2; }
.grid { position: absolute; top: 0; left: calc(var(--names) + .6rem); height: 100%;
  width: calc(100% - var(--names) - .6rem); }
.phone { display: none; } .grid line, .level line { stroke: var(--rule); }
.level text { text-anchor: end; transform: translateX(-8px); } .band { fill: var(--band); }
.done { fill: var(--done); } .plan { fill: none; stroke: var(--plan); stroke-width: 1.5; }
.agreed { fill: var(--plan); opacity: .2; }
.plan-max { fill: none; stroke: var(--plan); stroke-dasharray: 3 3; }
.gap { fill: url(#hatch); stroke: var(--gap); } .hatch { stroke: var(--gap); stroke-width: 2; }
.again { fill: var(--mark); stroke: var(--paper); }
.lost { stroke: var(--mark); stroke-width: 2; } .halo { stroke: var(--paper); stroke-width: 5; }
.curve { fill: none; stroke: var(--done); stroke-width: 2; vector-effect: non-scaling-stroke; }
.dot { fill: var(--done); }
.target { stroke: var(--mark); stroke-width: 1.5; stroke-dasharray: 6 4; }
.break { stroke: var(--soft); stroke-width: 1.5; fill: none; }
@media print { main { max-width: none; padding: 0; } h2, h3 { break-after: avoid; }
  table { font-size: .75rem; } figure, .row, tr { break-inside: avoid; } }
@media screen and (max-width: 60rem) { table { font-size: .75rem; } }
@media screen and (max-width: 44rem) { table { font-size: .92rem; }
  .paper { display: none; } .phone { display: inline; }
  .row { display: block; margin-top: .35rem; } .row p { text-align: left; }
  .grid { left: 0; width: 100%; }
  .level text { text-anchor: start; transform: translate(2px, -6px); }
  thead { position: absolute; clip-path: inset(50%); height: 1px; overflow: hidden; }
  table, tbody, tr, th, td, caption { display: block; }
  th, td { border: 0; padding: .1rem 0; } td { position: relative; padding-left: 7.5rem; }
  td:empty { display: none; }
  td::before { content: attr(data-head); color: var(--soft); position: absolute; left: 0; }
  tbody tr { border-bottom: 1px solid var(--rule); padding: .3rem 0; } }
@media screen and (max-width: 28rem) { main { padding: 1rem .8rem 2rem; } dl:not(.counts) {
  display: block; } dl:not(.counts) dd { margin-bottom: .4rem; } }
`;

/** Nothing may be fetched and nothing may run; only the page's own style applies. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * A whole document with `body` as its main part; `style` stands in place of the usual one. `maker`
 * is what tells an earlier page of its kind from any other file.
 */
export function page(title: string, body: Markup, style = "", maker = "Brinebell"): string {
  return html`<!doctype html>
<html lang="en">
<head>
<meta name="generator" content="${maker}">
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${raw(style === "" ? STYLE : style)}</style>
</head>
<body>
<main>
${body}</main>
</body>
</html>
`.markup;
}

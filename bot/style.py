"""How the board looks: soil, straw and clay; patterns besides colours; narrow, wide, paper."""

STYLE = """
:root { color-scheme: light; --ink: #2b241c; --soft: #6a5d4d; --paper: #fbf7ee; --card: #fffdf8;
  --edge: #ddd0b8; --straw: #e9c46a; --clay: #c97b4a; --leaf: #4f7942; --soil: #6b4a35;
  --alarm: #9b2226; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1rem; max-width: 60rem; background: var(--paper);
  color: var(--ink); font: 1rem/1.5 Georgia, "DejaVu Serif", serif; }
h1 { margin: 0; font-size: 1.7rem; }
h2 { margin: 1.5rem 0 .5rem; font-size: 1.2rem; border-bottom: 3px double var(--edge); }
h3 { display: flex; justify-content: space-between; gap: 1rem; margin: 0; font-size: 1.1rem; }
h3 small { font-weight: normal; font-style: italic; white-space: nowrap; color: var(--soft); }
p { margin: .25rem 0; text-wrap: pretty; }
header p, footer { color: var(--soft); }
footer a { color: inherit; }
footer { margin-top: 2rem; font-size: .9rem; }
dl { margin: 0; padding: .75rem 1rem; background: var(--card);
  border-left: .4rem solid var(--straw); }
dt { font-weight: bold; }
dt.late { color: var(--alarm); }
dt.late::before { content: "! "; }
dd { margin: 0 0 .5rem; }
.bins article { margin: .75rem 0; padding: .75rem 1rem; background: var(--card);
  border: 1px solid var(--edge); border-radius: .5rem; break-inside: avoid; }
@media (min-width: 48rem) {
  dl { display: grid; grid-template-columns: 20rem 1fr; gap: .4rem 1rem; }
  dd { margin: 0; }
  .bins { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1rem; align-items: start; }
  .bins h2, .bins .legend { grid-column: 1 / -1; }
}
.legend { display: flex; flex-wrap: wrap; gap: .25rem 1.25rem; margin: 0; padding: 0;
  list-style: none; }
ol { margin: .25rem 0 0; padding: 0; list-style: none; font-size: .95rem; }
.patterns { position: absolute; width: 0; height: 0; }
.aside { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
.line.lanes-2 { height: 2.25rem; }
.swatch { width: 1.5rem; height: .875rem; vertical-align: -.1em; }
.line { display: block; width: 100%; height: 1.25rem; margin-top: .5rem;
  background: var(--paper); border: 1px solid var(--edge); }
svg .filling { fill: var(--straw); }
svg .fermenting { fill: var(--clay); }
svg .ready { fill: var(--leaf); }
svg .in-the-ground { fill: var(--soil); }
svg .ink { fill: var(--ink); }
pattern .line { stroke: var(--ink); stroke-width: 1; fill: none; background: none; border: 0; }
pattern .in-the-ground + .line { stroke: var(--paper); }
svg .bar { stroke: var(--ink); stroke-width: 1; vector-effect: non-scaling-stroke; }
svg .week { stroke: var(--edge); stroke-width: 1; vector-effect: non-scaling-stroke; }
svg .now { stroke: var(--alarm); stroke-width: 3; vector-effect: non-scaling-stroke; }
.scale { position: relative; height: 1.3rem; margin: 0; font-size: .8rem; color: var(--soft); }
.scale span { position: absolute; }
.scale span:nth-child(2) { left: 33.33%; transform: translateX(-50%); color: var(--alarm); }
.scale span:nth-child(3) { right: 0; }
meter { width: 8rem; height: .9rem; vertical-align: -.1em; }
@media print {
  body { max-width: none; padding: 0; background: none; font-size: 10pt; }
  dl, .bins article { background: none; }
  ol { font-size: inherit; }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
"""

/** Style of the script: two pages of A4 in print. */
export const FLASKS_STYLE = `
@page { size: A4; margin: 10mm 11mm; }
* { box-sizing: border-box; }
body { margin: 0; color: #111827; background: #fff; font: 14px/1.35 system-ui, sans-serif; }
main { max-width: 1000px; margin: 0 auto; padding: 16px; }
h1 { font-size: 1.6em; margin: 0 0 .2em; }
h2 { font-size: 1.12em; margin: .7em 0 .25em; border-bottom: 1px solid #9ca3af; break-after: avoid; }
h3 { font-size: 1em; margin: .4em 0 .1em; }
p { margin: .2em 0; }
ul, ol { margin: .1em 0; padding-left: 1.3em; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 1px 6px 1px 0; border-bottom: 1px solid #e5e7eb; }
th { font-weight: 600; }
td.n, th.n { text-align: right; white-space: nowrap; }
.flasks svg { width: 100%; height: auto; max-height: 330px; }
.two { columns: 2; column-gap: 18px; }
.two > * { break-inside: avoid; }
.swatch { display: inline-block; width: 1.5em; height: .95em; border: 1px solid #4b5563; border-radius: 2px; vertical-align: -.1em; }
.say { font-style: italic; }
.small { font-size: .88em; color: #374151; }
.second h2 { margin-top: .45em; }
@media (max-width: 640px) { .two { columns: 1; } }
@media print {
  body { font-size: 8.4pt; line-height: 1.2; }
  main { max-width: none; padding: 0; }
  .second { break-before: page; }
  .flasks svg { max-height: 58mm; }
  .screen { display: none; }
}
`;

import { HAIRLINE, INK_COLOURS, PLOT_COLOURS } from '../palette.ts';

const INK_RULES = Object.entries(INK_COLOURS)
  .map(([ink, colour]) => `.ink-${ink}{--ink:${colour}}`)
  .join('\n');

/** The page's one style sheet: the same look on screen and on paper. */
export const STYLE_SHEET = `
:root{color-scheme:light;--hair:${HAIRLINE};--line:${INK_COLOURS.line};--quiet:${INK_COLOURS.quiet}}
${INK_RULES}
*{box-sizing:border-box}
body{margin:0 auto;padding:2.5rem 1.25rem 4rem;max-width:60rem;background:#fff;color:var(--line);
  font:0.94rem/1.45 "Noto Sans",system-ui,sans-serif;overflow-wrap:anywhere}
h1{font-size:2.1rem;line-height:1.2;margin:0}
h2{font-size:1.35rem;margin:2.6rem 0 .6rem}
h3{font-size:1.02rem;margin:1.6rem 0 .3rem}
p{margin:.4rem 0;white-space:pre-line}
.subject{font-size:1.15rem;color:var(--quiet);margin:.15rem 0 1.6rem}
.banner{float:right;border:2px solid var(--line);padding:.15rem .6rem;font-weight:700;font-size:.85rem}
dl{margin:.6rem 0;display:grid;grid-template-columns:minmax(8rem,27%) 1fr;gap:.2rem 1rem}
dt,.quiet,figcaption,.key{color:var(--quiet)}
dd{margin:0;white-space:pre-line}
.figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(9rem,1fr));gap:1rem;margin:1.2rem 0}
.figures>div{display:flex;flex-direction:column-reverse;justify-content:flex-end}
.figures dd{font-size:2rem;line-height:1.2;font-weight:600}
.figures dt{font-size:.85rem}
.wide{overflow-x:auto}
table{border-collapse:collapse;width:100%;margin:.4rem 0 1.2rem;font-size:.84rem;overflow-wrap:normal}
caption{text-align:left;font-weight:600;font-size:.94rem;padding-bottom:.35rem}
th{font-weight:400;text-align:left;vertical-align:bottom;color:var(--quiet)}
thead th{border-bottom:1.5px solid var(--line)}
tbody th{font-weight:600;color:var(--line);padding-top:.7rem}
th,td{padding:.22rem .7rem .22rem 0}
td{border-bottom:1px solid var(--hair);vertical-align:top;white-space:pre-line}
.open td{border-bottom:none;padding-bottom:0}
.below td{padding-top:0}
.right{text-align:right}
.mark{width:.85em;height:.85em;vertical-align:-.06em;margin-right:.4em;overflow:visible}
.mark path{fill:var(--ink)}
.mark.hollow path{fill:none;stroke:var(--ink);stroke-width:1}
.note{border-left:4px solid var(--ink);padding:.15rem 0 .15rem .9rem;margin:1rem 0}
.note strong{color:var(--ink)}
.note ul{margin:.2rem 0;padding-left:1.1rem}
.note li{white-space:pre-line}
figure{margin:1rem 0;text-align:center}
figure svg.drawing{width:min(100%,34rem);max-height:24rem}
.hatches{position:absolute;width:0;height:0}
.plot{text-align:left;break-inside:avoid}
.plot figcaption{font-weight:600;font-size:.94rem;color:var(--line);margin-bottom:.35rem}
.plot>svg{display:block;width:min(100%,35rem);overflow:visible}
.plot text{font-size:13px;font-weight:600;fill:var(--line)}
.plot text.soft{font-weight:400;fill:var(--quiet)}
.plot .soft{color:var(--quiet);font-size:.84rem}
.plot .grid{stroke:var(--hair);fill:none}
.plot .axis,.plot .cross,.plot .whiskers,.plot .edge{stroke:var(--line);stroke-width:1.3;fill:none}
.plot .whiskers{stroke:var(--quiet)}
.plot .line{stroke:var(--line);stroke-width:2.2;fill:none;stroke-linejoin:round}
.plot .dashed{stroke:var(--quiet);stroke-width:1.4;stroke-dasharray:6 4}
.plot .band{fill:${PLOT_COLOURS.band.ground};stroke:${PLOT_COLOURS.band.edge};fill-opacity:.8}
.plot .bars{fill:${PLOT_COLOURS.bars.ground}}
.plot .window{fill:${PLOT_COLOURS.window.ground};stroke:${PLOT_COLOURS.window.edge};stroke-dasharray:2 3}
.plot .outside{fill:url(#hatch-outside);stroke:${PLOT_COLOURS.outside}}
.plot .dot,.plot .tag,.plot .limit{fill:var(--line)}
.plot .ring{fill:#fff;stroke:var(--line);stroke-width:1.8}
.plot .well{fill:${PLOT_COLOURS.well}}
.plot text.number{fill:#fff;font-size:12px}
.plot-key,.plot-bars{list-style:none;margin:.4rem 0;padding:0;max-width:35rem;font-size:.86rem}
.plot-key{display:flex;flex-wrap:wrap;gap:.15rem 1.4rem}
.plot-key li{display:flex;gap:.5rem}
.plot-key svg{flex:none;width:26px;height:18px}
.plot-bars .words{display:flex;justify-content:space-between;gap:1rem}
.plot-bars svg:not(.mark){display:block;width:100%;height:.9rem}
.plot-bars li{margin-bottom:.4rem}
.key{display:flex;flex-wrap:wrap;justify-content:center;gap:.3rem 1.4rem;font-size:.85rem;margin:.4rem 0;color:var(--line)}
figcaption{font-size:.85rem}
.seal{display:grid;grid-template-columns:1fr 11rem;gap:1.2rem;align-items:start}
.seal dl{display:block}
.seal dt{font-size:.85rem}
.seal dd{margin-bottom:.35rem}
footer{margin-top:3rem;border-top:1px solid var(--hair);padding-top:.5rem;color:var(--quiet);font-size:.85rem}
@media (max-width:34rem){.banner{float:none;display:inline-block;margin-bottom:.8rem}.seal,dl{grid-template-columns:1fr}dl{gap:0 1rem}dd{margin-bottom:.4rem}}
@page{size:A4;margin:18mm 16mm}
@media print{body{padding:0;max-width:none;font-size:9pt}h2,h3,caption{break-after:avoid}tr,figure,.seal,.note li{break-inside:avoid}
  thead{display:table-header-group}.open{break-after:avoid}.break{break-before:page}.wide{overflow:visible}}
`;

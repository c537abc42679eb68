import { palette } from "../drawing/palette.js";

/** The dress of a page: a quiet column of type, one accent, and rules for a printer and a phone. */
export const documentStyle = `
:root{color-scheme:light;--ink:${palette.ink};--muted:${palette.muted};--rule:${palette.rule};--hair:${palette.hair};--wash:${palette.wash};--accent:${palette.accent}}
*{box-sizing:border-box}
html{font:400 1.0625rem/1.55 "Source Serif 4","Source Serif Pro",Charter,"Iowan Old Style","Palatino Linotype",Georgia,serif;color:var(--ink);background:#fff;-webkit-text-size-adjust:100%;font-variant-numeric:lining-nums tabular-nums}
body{margin:0 auto;max-width:52rem;padding:clamp(1.25rem,5vw,4rem) clamp(1rem,5vw,3rem) 5rem}
h1,h2,h3,p,figcaption,li{overflow-wrap:anywhere}
h1{font-weight:600;font-size:clamp(1.6rem,5vw,2.3rem);line-height:1.2;margin:0 0 .4rem}
h2{font-weight:600;font-size:1.35rem;line-height:1.3;margin:0 0 .8rem}
h3{font-weight:600;font-size:1.05rem;margin:1.6rem 0 .3rem}
header{border-bottom:2px solid var(--accent);padding-bottom:1.2rem;margin-bottom:1.6rem}
header p{margin:0;color:var(--muted)}
nav ul{list-style:none;display:flex;flex-wrap:wrap;gap:.3rem 1.3rem;margin:0;padding:0}
a{color:var(--accent)}
nav a{display:inline-block;padding:.2rem 0}
section{margin-top:3.4rem}article+article{margin-top:6rem}
p{margin:0 0 1rem;max-width:40rem}
.note{color:var(--muted);font-size:.92rem}
.caution{border-left:3px solid var(--accent);padding:.1rem 0 .1rem 1rem}
.pictures{display:flex;flex-wrap:wrap;gap:1.4rem 2rem;align-items:flex-start;margin:1.4rem 0}
.pile{display:flex;flex-direction:column;gap:1.4rem;max-width:100%}
figure{margin:0;max-width:100%;min-width:min(11rem,100%)}
figure .scroll{overflow-x:auto}
svg{display:block;height:auto}
figcaption,caption{font:400 .88rem/1.45 "Source Sans 3","Source Sans Pro","Segoe UI","Helvetica Neue",Arial,sans-serif;color:var(--muted);text-align:left}
figcaption{margin-top:.5rem;width:0;min-width:100%}
caption{padding-bottom:.5rem}
caption span{display:inline-block;max-width:min(36rem,calc(100vw - 2rem))}
.scroll{position:relative;overflow-x:auto;max-width:100%}
@media screen{.scroll{background:linear-gradient(90deg,#fff 1.2rem,#fff0) 0/2.4rem 100%,linear-gradient(270deg,#fff 1.2rem,#fff0) 100%/2.4rem 100%,linear-gradient(90deg,#6b5a3a66,#6b5a3a00) 0/.9rem 100%,linear-gradient(270deg,#6b5a3a66,#6b5a3a00) 100%/.9rem 100%;background-attachment:local,local,scroll,scroll;background-repeat:no-repeat}}
.table{margin:1.5rem 0}
table{border-collapse:collapse;font-size:.95rem;line-height:1.4}
th,td{padding:.28rem .9rem .28rem 0;text-align:left;vertical-align:top;border-bottom:1px solid var(--hair)}
thead th{font:600 .82rem/1.3 "Source Sans 3","Source Sans Pro","Segoe UI","Helvetica Neue",Arial,sans-serif;color:var(--muted);border-bottom:1px solid var(--rule);vertical-align:bottom}
tbody th{font-weight:600;white-space:nowrap}
tbody th.phrase{white-space:normal;min-width:9rem}
.number{text-align:right;white-space:nowrap}
.tick{text-align:center}
.boxes{display:inline-grid;grid-template-columns:repeat(6,auto);gap:.42rem}
.whole{white-space:nowrap}
.large table{font-size:1.25rem;line-height:1.35}.large tbody td,.large tbody th{padding-top:.3rem;padding-bottom:.3rem}
.large td strong{font-weight:600}
tr.heading th{border-bottom:none;border-top:3px solid var(--ink);padding:.4rem 0 .3rem;white-space:normal}
.rising tr.heading th{border-top:none;border-bottom:3px solid var(--ink);padding:.3rem 0 .6rem}
.rising tfoot td{border:none;font:600 .82rem/1.3 "Source Sans 3","Source Sans Pro","Segoe UI","Helvetica Neue",Arial,sans-serif;color:var(--muted)}
tr.tint>*{background:rgb(122 96 40/.09)}
.boxed{display:flex;flex-wrap:wrap;gap:.3rem;min-width:4rem}
.boxed label{display:inline-flex;align-items:center;gap:.3rem;min-height:1.6rem;padding:0 .45rem;border:1px solid var(--muted);border-radius:2px;background:#fff;font-weight:400}
.no-box{min-width:2.6rem;text-align:center;color:var(--muted)}
.boxed input[type=checkbox]{margin:0}
.boxed label:has(:checked){background:var(--wash);color:var(--muted);text-decoration:line-through}
.swatch{width:2rem;height:1rem;margin-top:.2rem;outline:1px solid var(--rule)}
input[type=checkbox]{accent-color:var(--accent);width:1.1rem;height:1.1rem;margin:.1rem 0}
strong{font-weight:600}
sub{font-size:.75em;line-height:0}
.blank{position:relative;display:inline-block;min-width:5em;border-bottom:1px solid var(--muted)}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.working{margin:1.8rem 0;padding-top:.8rem;border-top:1px solid var(--hair)}
.working h3{margin:0 0 .5rem}
.working p{margin:.35rem 0}
.formula{padding:.2rem 0}
.working ul{margin:.4rem 0;padding-left:1.2rem;font-size:.92rem;color:var(--muted)}
math{font-size:1.08rem}
@media print,(min-width:48rem){
 .working:not(.long){display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);column-gap:2rem}.working h3{grid-column:1/-1}.meaning ul{margin-top:.2rem}
}
@media print{
 html{font-size:9.5pt;line-height:1.4}body{max-width:none;padding:0}nav{display:none}
 section{margin-top:2.2rem}article+article{break-before:page;margin-top:0}h2,h3,caption,h2+p{break-after:avoid}figure,tr,.working,.caution,.short,p{break-inside:avoid}thead{break-inside:avoid}
 .table{margin:1rem 0}.narrow{columns:62mm;column-gap:8mm}.pictures{margin:1rem 0;gap:1rem 8mm}
 .scroll,figure .scroll{overflow:visible}a{color:inherit;text-decoration:none}
 .large table{font-size:12pt}.boxed input[type=checkbox]{display:none}.boxed label{min-height:0;padding:0 1mm}.rising{break-inside:avoid}
 .boxes{gap:.25rem}input[type=checkbox]{width:.85rem;height:.85rem;margin:0}
}
`.trim();

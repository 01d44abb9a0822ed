// The answer side.
import {element, at} from "./element.js";
import {goTo} from "./plan.js";
import {button} from "./fields.js";

export const figure = c => element("figure", {id: "chart-" + c.Name}, element("figcaption", {}, element("strong", {}, c.Title), " ", c.Key),
  element("div", {class: "wide", tabindex: "0", role: "group", "aria-label": c.Title}, element("img", {alt: c.Desc, src: "data:image/svg+xml;charset=utf-8," + encodeURIComponent(c.SVG)})));

// mark is how far an answer is known.
function mark(a) {
  const t = a.simulation.days_needed.total, n = a.simulation.replications;
  const error = t.p50_ci[0] == null ? "" : `; P50 of the days is known to ${t.p50_ci[0].toFixed(1)} to ${t.p50_ci[1].toFixed(1)} d (95 %)`;
  return (a.rough ? "Rough, refining: " : "") + `${n.toLocaleString("en")} expeditions simulated` + error + ".";
}

const listed = list => element("ul", {}, list.map(l => element("li", {}, l)));
const folded = (fold, name, ...contents) => element("details", {"data-fold": fold}, element("summary", {}, name), ...contents);

const table = t => element("div", {class: "wide", tabindex: "0", role: "group", "aria-label": "Site by site"}, element("table", {},
  element("thead", {}, element("tr", {}, t.heads.map(h => element("th", {scope: "col"}, h)))),
  element("tbody", {}, t.rows.map(r => element("tr", {}, r.map((c, n) => element(n ? "td" : "th", n ? {} : {scope: "row"}, c)))))));

// inBrief is the days and the chance of rank 1.
export const inBrief = a => [a.facts[0], a.facts[2]].map(f => f.Label + " " + f.Value).join("; ");

export function showAnswer(a) {
  at("state").textContent = mark(a);
  const open = new Set([...document.querySelectorAll("#answer details[open]")].map(d => d.dataset.fold));
  at("answer").replaceChildren(
    element("div", {class: "headline"}, a.headlines.map(h => element("p", {}, h))),
    element("dl", {class: "facts"}, a.facts.map(f => element("div", {}, element("dt", {}, f.Label), element("dd", {"data-exact": f.Exact}, f.Value, f.Note ? element("small", {}, f.Note) : null)))),
    element("h3", {id: "sites"}, "Site by site"), element("p", {class: "how"}, a.sites.note), table(a.sites),
    element("h3", {}, "What drives the days"), element("p", {}, "Of the variance of the days needed: " + a.drivers.join("; ") + "."),
    ...(a.charts ?? []).map(figure),
    element("div", {id: "sea"}),
    folded("weak", "What makes it weaker than it looks", listed(a.simulation.warnings)),
    folded("call", "The same answer on the command line", element("p", {}, element("code", {}, a.call))));
  for (const d of document.querySelectorAll("#answer details")) d.open = open.has(d.dataset.fold);
  at("answer").classList.remove("stale");
  at("glance").textContent = inBrief(a);
}

export const showSea = c => at("sea")?.replaceChildren(figure(c));

// showCheck lists what the check found; each leads to its field.
export function showCheck(r) {
  const found = r?.findings ?? [];
  const open = document.querySelector("#check details")?.open, stops = found.some(f => f.stop);
  at("check").replaceChildren(...(r?.verdict ? [element("details", {"data-fold": "check"}, element("summary", {}, r.verdict),
    element("ul", {}, found.map(f => element("li", {class: f.stop ? "fault" : ""}, f.words, " ", f.path ? button("Show", () => goTo(f.path), {"aria-label": "Show in the plan: " + f.words}) : null))))] : []));
  const details = document.querySelector("#check details");
  if (details) details.open = open || stops;
}

// hide keeps an answer from being read for a plan that it does not belong to.
export function hide(why) {
  at("answer").classList.add("stale");
  at("state").textContent = at("glance").textContent = why;
}

export const showDifference = lines => at("difference").replaceChildren(...lines.map(l => element("p", {}, l)));

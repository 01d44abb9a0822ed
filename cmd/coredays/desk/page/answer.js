// The answer side.
import {element, at} from "./element.js";
import {map} from "./map.js";

const figure = c => element("figure", {}, element("figcaption", {}, element("strong", {}, c.Title), " ", c.Key),
  element("img", {alt: c.Desc, src: "data:image/svg+xml;charset=utf-8," + encodeURIComponent(c.SVG)}));

// mark is how far an answer is known.
function mark(a) {
  const t = a.simulation.days_needed.total, n = a.simulation.replications;
  const error = t.p50_ci[0] == null ? "" : `; P50 of the days is known to ${t.p50_ci[0].toFixed(1)} to ${t.p50_ci[1].toFixed(1)} d (95 %)`;
  return (a.rough ? "Rough, refining: " : "") + `${n.toLocaleString("en")} expeditions simulated` + error + ".";
}

export function showAnswer(a) {
  at("state").textContent = mark(a);
  const charts = a.charts?.length ? a.charts.map(figure) : [];
  at("answer").replaceChildren(
    element("div", {class: "headline"}, a.headlines.map(h => element("p", {}, h))),
    element("dl", {class: "facts"}, a.facts.map(f => element("div", {}, element("dt", {}, f.Label), element("dd", {"data-exact": f.Exact}, f.Value, f.Note ? element("small", {}, f.Note) : null)))),
    element("p", {id: "verdict"}, a.verdict ?? ""),
    element("h3", {}, "Site by site"), element("ul", {}, a.sites.map((s, n) => element("li", {}, element("strong", {}, a.simulation.sites[n].name + ": "), s))),
    element("h3", {}, "What drives the days"), element("ul", {}, a.simulation.drivers.map(d => element("li", {}, `${d.name}: ${(100 * d.share).toFixed(0)} %`))),
    element("h3", {}, "The track"), map(a.track) ?? "",
    ...charts,
    element("details", {}, element("summary", {}, "What makes it weaker than it looks"), element("ul", {}, a.simulation.warnings.map(w => element("li", {}, w)))));
  at("answer").classList.remove("stale");
}

// hide keeps an answer from being read for a plan that it does not belong to.
export const hide = why => { at("answer").classList.add("stale"); at("state").textContent = why; };

export const showDifference = lines => at("difference").replaceChildren(...lines.map(l => element("p", {}, l)));

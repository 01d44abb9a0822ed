// The plan side: fields and cards made from the plan as typed, and what is wrong beside them.
import {element, at} from "./element.js";
import {field, button} from "./fields.js";
import {site, addSite} from "./sites.js";
import {place} from "./words.js";

// orderOf is the order of the sites as the page shows them: as stated, then those that it does not name.
function orderOf(tree, names) {
  const stated = Array.isArray(tree.order) ? tree.order.filter(n => names.includes(n)) : [];
  return [...new Set([...stated, ...names])];
}

// showPlan makes the fields anew, and leaves folds and the focus where they were.
export function showPlan(desk, tree) {
  const open = new Set([...document.querySelectorAll("#fields details[open]")].map(d => d.dataset.fold));
  const active = document.activeElement, focus = at("fields").contains(active) ? active.id || active.getAttribute("aria-label") || active.textContent : "";
  const sites = Array.isArray(tree.sites) ? tree.sites : [], names = sites.map(s => s?.name), order = orderOf(tree, names);
  const top = keys => keys.map(k => field(desk, tree, "", k));
  const rest = Object.keys(tree).filter(k => !["version", "title", "sails", "sea_days", "ports", "in_port_before_sailing", "ship", "rates", "sites", "order"].includes(k));
  const rate = element("input", {"aria-label": "Name of a rate to state", placeholder: "such as wash_over", autocomplete: "off"});
  at("fields").replaceChildren(
    element("h3", {}, "Expedition"), ...top(["title", "sails", "sea_days", "ports", "in_port_before_sailing", "ship"]),
    element("details", {"data-fold": "rates"}, element("summary", {}, `Rates stated here (${Object.keys(tree.rates ?? {}).length})`), Object.keys(tree.rates ?? {}).map(k => field(desk, tree.rates, "rates", k)),
      element("div", {class: "row"}, rate, button("State this rate", () => { const key = rate.value.trim(); if (!/^[a-z_]+$/.test(key)) return; rate.parentElement.before(field(desk, {}, tree.rates ? "rates" : "", key)); at("f-" + (tree.rates ? "rates." : "") + key).focus(); }))),
    element("details", {"data-fold": "rest"}, element("summary", {}, "Order, rules and further figures"), top(["order", ...rest])),
    element("h3", {}, "Sites, in their order"),
    ...order.map((name, position) => site(desk, tree, names.indexOf(name), name, position, order)),
    button("Add a site", () => addSite(desk, tree), {id: "addsite"}));
  for (const d of document.querySelectorAll("#fields details")) d.open = open.has(d.dataset.fold);
  if (focus) [...document.querySelectorAll("#fields input, #fields button, #fields select")].find(e => e.id == focus || e.getAttribute("aria-label") == focus || e.textContent == focus)?.focus();
}

// inputAt is the field of a path, or the nearest around it.
function inputAt(path) {
  for (let p = path; p; p = p.slice(0, Math.max(p.lastIndexOf("."), p.lastIndexOf("["), 0))) {
    if (at("f-" + p)) return at("f-" + p);
  }
  return null;
}

function unfold(input) {
  for (let d = input.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
}

// goTo opens what a field is in and goes there.
export function goTo(path) {
  const input = inputAt(path) ?? document.querySelector(`[data-drop="${path}"]`) ?? at("text");
  unfold(input);
  input.focus();
  input.scrollIntoView({block: "center"});
}

// showFaults puts each fault beside its field, and all of them in a list that leads there.
export function showFaults(tree, faults) {
  for (const e of document.querySelectorAll("span.fault")) e.textContent = "";
  for (const e of document.querySelectorAll("[aria-invalid]")) e.removeAttribute("aria-invalid");
  at("faults").replaceChildren(...faults.map(f => {
    const input = inputAt(f.path), said = (f.value ? `"${f.value}": ` : "") + "wanted is " + f.wanted;
    if (input) {
      input.setAttribute("aria-invalid", "true");
      at(input.id + "-fault").textContent += said + ". ";
      unfold(input);
    }
    const where = place(tree, f.path);
    return element("li", {}, where ? button(where, () => goTo(f.path), {class: "link"}) : "", (where ? ": " : "") + said + (f.line ? ` (line ${f.line})` : ""));
  }));
}

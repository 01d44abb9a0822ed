// Sites as cards: their layers, holes and stages, what is left out, added and taken out.
import {element} from "./element.js";
import {field, leftOut, isOut, more, button} from "./fields.js";
import {inBrackets, nameOf, words} from "./words.js";

const keysOf = (tree, always, never = []) => [...new Set([...always, ...Object.keys(tree ?? {})])].filter(k => !never.includes(k));

// added puts an element behind the last of a list.
const added = (list, path, value) => [list?.length ? {path: `${path}[${list.length}]`, value} : {path, value: `[${value}]`}];

// takenOut takes an element out of a list, and the list with its last one.
const takenOut = (list, path, n) => [{path: list.length > 1 ? `${path}[${n}]` : path, value: ""}];

// next is a name that is not taken: a letter, or a number at its end.
function next(names, first) {
  let name = first;
  const up = /^[A-Y]$/.test(first) ? s => String.fromCharCode(s.charCodeAt(0) + 1) : s => s.replace(/\d*$/, d => String(Number(d || 0) + 1).padStart(d.length, "0"));
  for (let tries = 0; names.includes(name) && tries < 200; tries++) name = name == "Z" ? "Z1" : up(name);
  return name;
}

function stage(desk, list, path, n) {
  return element("div", {class: "stage"}, ["with", "to"].map(k => field(desk, list[n], `${path}[${n}]`, k)),
    button("×", () => desk.change(takenOut(list, path, n), "One stage less"), {"aria-label": `Take out stage ${n + 1} of ${path}`}));
}

function layer(desk, list, path, n) {
  return element("fieldset", {}, element("legend", {}, "Layer " + (n + 1)), keysOf(list[n], ["bottom", "lithology"]).map(k => field(desk, list[n], `${path}[${n}]`, k)),
    more(desk, list[n], `${path}[${n}]`, "layer"),
    button("Take out this layer", () => desk.change(takenOut(list, path, n), "One layer less"), {"aria-label": `Take out layer ${n + 1} of ${path}`}));
}

function hole(desk, list, path, n, site, deepest) {
  const tree = list[n], whole = `${path}[${n}]`, task = tree?.task != null, name = nameOf(tree), full = site + " " + name;
  const core = Array.isArray(tree?.core) ? tree.core : [];
  return element("fieldset", {class: isOut(tree) ? "out" : ""}, element("legend", {}, name), leftOut(desk, tree, whole, full),
    keysOf(tree, task ? ["task", "rank", "takes"] : ["name", "rank", "logging"], ["core", "left_out"]).map(k => field(desk, tree, whole, k)),
    task ? null : element("fieldset", {}, element("legend", {}, "Stages: tool, and how deep"), core.map((_, i) => stage(desk, core, whole + ".core", i)),
      button("Add a stage", () => desk.change(added(tree.core, whole + ".core", `{with: XCB, to: ${deepest}}`), "A stage more in " + full), {"aria-label": "Add a stage to " + full})),
    more(desk, tree, whole, task ? "task" : "hole"),
    button("Take out " + name, () => desk.change(takenOut(list, path, n), "Took out " + full), {"data-drop": whole, "aria-label": "Take out " + full}));
}

// deeper is a depth for a further layer, 50 of the same unit below the last one.
const deeper = bottom => bottom ? bottom.replace(/^[\d.]+/, n => String(Number(n) + 50)) : "100 mbsf";

// without are the edits that take a site out of the file, its place in the order and its rules with it.
function without(tree, n) {
  const name = tree.sites[n].name, edits = takenOut(tree.sites, "sites", n);
  if (Array.isArray(tree.order) && tree.order.includes(name)) edits.push({path: "order", value: tree.order.length > 1 ? inBrackets(tree.order.filter(o => o != name)) : ""});
  const rules = Array.isArray(tree.order_rules) ? tree.order_rules : [];
  const left = rules.filter(r => r?.first != name && r?.then != name);
  for (let i = rules.length - 1; i >= 0 && left.length; i--) if (!left.includes(rules[i])) edits.push({path: `order_rules[${i}]`, value: ""});
  if (rules.length && !left.length) edits.push({path: "order_rules", value: ""});
  return edits;
}

// addSite puts a site like the last one into the file, with one hole, to be changed from there.
export function addSite(desk, tree) {
  const sites = Array.isArray(tree.sites) ? tree.sites : [], like = sites.at(-1) ?? {};
  const name = next(sites.map(s => s?.name), like.name ? next([like.name], like.name) : "SITE-1");
  const parts = {name, position: like.position ?? "0N 0E", water_depth: like.water_depth ?? "1000 m", approved_to: like.approved_to ?? "200 mbsf"};
  const layers = (like.layers ?? [{bottom: "200 mbsf", lithology: "nannofossil ooze"}]).map(l => ({bottom: l.bottom, lithology: l.lithology}));
  const site = inBrackets({...parts, layers, holes: [{name: "A", core: [{with: "APC", to: "refusal"}]}], weather: {climate: "built in"}});
  const edits = added(tree.sites, "sites", site);
  if (Array.isArray(tree.order)) edits.push({path: "order", value: inBrackets([...tree.order, name])});
  desk.change(edits, "Site " + name + " added");
}

const folded = (path, name, ...contents) => element("details", {"data-fold": path}, element("summary", {}, name), ...contents);

export function site(desk, whole, n, name, position, order) {
  const tree = whole.sites[n] ?? {}, path = `sites[${n}]`, layers = Array.isArray(tree.layers) ? tree.layers : [], holes = Array.isArray(tree.holes) ? tree.holes : [];
  const step = by => desk.reorder(order, position, position + by), names = holes.map(h => h?.name ?? h?.task);
  const maps = Object.keys(tree).filter(k => tree[k] && typeof tree[k] == "object" && !Array.isArray(tree[k]));
  const card = element("article", {class: "card" + (isOut(tree) ? " out" : ""), draggable: "true", "aria-label": "Site " + name, "data-site": name},
    element("header", {}, element("h4", {}, name + (tree.priority == "alternate" ? " (alternate)" : "")),
      button("↑", () => step(-1), {"aria-label": "Site " + name + " earlier", disabled: position == 0}),
      button("↓", () => step(1), {"aria-label": "Site " + name + " later", disabled: position == order.length - 1})),
    leftOut(desk, tree, path, name),
    keysOf(tree, ["name", "position", "water_depth", "priority", "approved_to", "cap"], ["layers", "holes", "left_out", ...maps]).map(k => field(desk, tree, path, k)),
    more(desk, tree, path, "site"),
    maps.length ? folded(path + ".maps", maps.map(words).join(", ").replace(/^./, c => c.toUpperCase()), maps.map(k => field(desk, tree, path, k))) : null,
    folded(path + ".layers", `Layers (${layers.length})`, layers.map((_, l) => layer(desk, layers, path + ".layers", l)),
      button("Add a layer", () => desk.change(added(tree.layers, path + ".layers", `{bottom: ${deeper(layers.at(-1)?.bottom)}, lithology: ${layers.at(-1)?.lithology ?? "nannofossil ooze"}}`), "A layer more at " + name), {"aria-label": "Add a layer at " + name})),
    folded(path + ".holes", `Holes and tasks (${names.join(", ")})`, holes.map((_, h) => hole(desk, holes, path + ".holes", h, name, layers.at(-1)?.bottom ?? tree.approved_to ?? "100 mbsf")),
      element("div", {class: "tools"},
        button("Add a hole", () => desk.change(added(tree.holes, path + ".holes", `{name: ${next(names, "A")}, core: [{with: APC, to: refusal}]}`), "Hole " + next(names, "A") + " added at " + name), {"aria-label": "Add a hole at " + name}),
        button("Add a task", () => desk.change(added(tree.holes, path + ".holes", `{task: ${next(names, "task 1")}, takes: 12 h}`), "A task added at " + name), {"aria-label": "Add a task at " + name}))),
    button("Take out site " + name, () => desk.change(without(whole, n), "Took out site " + name), {"data-drop": path}));
  card.addEventListener("dragstart", e => { if (e.target == card) e.dataTransfer.setData("text/plain", String(position)); });
  card.addEventListener("dragover", e => { e.preventDefault(); card.classList.add("over"); });
  card.addEventListener("dragleave", () => card.classList.remove("over"));
  card.addEventListener("drop", e => { card.classList.remove("over"); const from = e.dataTransfer.getData("text/plain"); if (/^\d+$/.test(from)) { e.preventDefault(); desk.reorder(order, Number(from), position); } });
  return card;
}

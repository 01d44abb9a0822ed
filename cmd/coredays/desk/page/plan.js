// The plan side: fields and cards made from the plan as typed.
import {element, at} from "./element.js";

const words = key => key.replaceAll("_", " ");

// inBrackets is a value as it would be typed in the file on one line.
export function inBrackets(value) {
  if (Array.isArray(value)) return "[" + value.map(inBrackets).join(", ") + "]";
  if (value && typeof value == "object") return "{" + Object.entries(value).map(([k, v]) => k + ": " + inBrackets(v)).join(", ") + "}";
  return String(value ?? "");
}

// field is one value with its label and its fault.
// A map has a field for each of its keys, so that what stands around them is left alone.
function field(desk, tree, path, key, name = words(key)) {
  const whole = path ? path + "." + key : key, id = "f-" + whole, value = tree?.[key];
  if (value && typeof value == "object" && !Array.isArray(value)) {
    return element("fieldset", {}, element("legend", {}, name), Object.keys(value).map(k => field(desk, value, whole, k)));
  }
  const input = element("input", {id, value: inBrackets(value), "data-path": whole, autocomplete: "off", "aria-describedby": id + "-fault"});
  input.addEventListener("input", () => desk.typed(whole, input.value));
  return element("div", {class: "field"}, element("label", {for: id}, name), input, element("span", {class: "fault", id: id + "-fault"}));
}

const keysOf = (tree, always, never = []) => [...new Set([...always, ...Object.keys(tree ?? {})])].filter(k => !never.includes(k));

function layer(desk, tree, path, n) {
  return element("fieldset", {}, element("legend", {}, "Layer " + (n + 1)), keysOf(tree, ["bottom", "lithology"]).map(k => field(desk, tree, path, k)));
}

function hole(desk, tree, path) {
  const task = tree?.task != null, name = task ? "Task " + tree.task : "Hole " + (tree?.name ?? "");
  const always = task ? ["task", "rank", "takes"] : ["name", "rank", "core", "logging"];
  return element("fieldset", {}, element("legend", {}, name), keysOf(tree, always).map(k => field(desk, tree, path, k)),
    element("button", {type: "button", onclick: () => desk.change(path, "", "Without " + name), "data-drop": path}, "Take out " + name));
}

function site(desk, tree, path, name, place, order) {
  const step = by => desk.reorder(order, place, place + by);
  const card = element("article", {class: "card", draggable: "true", "aria-label": "Site " + name, "data-site": name},
    element("header", {}, element("h3", {}, name),
      element("button", {type: "button", "aria-label": "Site " + name + " earlier", disabled: place == 0, onclick: () => step(-1)}, "↑"),
      element("button", {type: "button", "aria-label": "Site " + name + " later", disabled: place == order.length - 1, onclick: () => step(1)}, "↓")),
    keysOf(tree, ["name", "position", "water_depth", "priority", "approved_to", "cap"], ["layers", "holes"]).map(k => field(desk, tree, path, k)),
    element("details", {"data-fold": path + ".layers"}, element("summary", {}, "Layers"), (tree.layers ?? []).map?.((l, n) => layer(desk, l, `${path}.layers[${n}]`, n))),
    element("details", {"data-fold": path + ".holes"}, element("summary", {}, "Holes and tasks"), (tree.holes ?? []).map?.((h, n) => hole(desk, h, `${path}.holes[${n}]`))));
  card.addEventListener("dragstart", e => { if (e.target == card) e.dataTransfer.setData("text/plain", String(place)); });
  card.addEventListener("dragover", e => { e.preventDefault(); card.classList.add("over"); });
  card.addEventListener("dragleave", () => card.classList.remove("over"));
  card.addEventListener("drop", e => { e.preventDefault(); card.classList.remove("over"); const from = e.dataTransfer.getData("text/plain"); if (/^\d+$/.test(from)) desk.reorder(order, Number(from), place); });
  return card;
}

// showPlan makes the fields anew, and leaves folds and the focus where they were.
export function showPlan(desk, tree) {
  const open = new Set([...document.querySelectorAll("details[data-fold][open]")].map(d => d.dataset.fold));
  const active = document.activeElement, focus = active?.id || active?.getAttribute("aria-label");
  const sites = Array.isArray(tree.sites) ? tree.sites : [], names = sites.map(s => s?.name);
  const order = Array.isArray(tree.order) && tree.order.every(n => names.includes(n)) ? tree.order : names;
  at("fields").replaceChildren(
    element("h3", {}, "Expedition"),
    ...["title", "sails", "sea_days", "ports", "in_port_before_sailing", "ship"].map(k => field(desk, tree, "", k)),
    element("details", {"data-fold": "rates"}, element("summary", {}, "Rates"), Object.keys(tree.rates ?? {}).map(k => field(desk, tree.rates, "rates", k))),
    element("h3", {}, "Sites, in their order"),
    ...order.map((name, place) => { const n = names.indexOf(name); return site(desk, sites[n] ?? {}, `sites[${n}]`, name, place, order); }));
  for (const d of document.querySelectorAll("details[data-fold]")) d.open = open.has(d.dataset.fold);
  if (focus) [...document.querySelectorAll("#fields input, #fields button")].find(e => e.id == focus || e.getAttribute("aria-label") == focus)?.focus();
}

// showFaults puts each fault beside its field, the nearest around it, and all of them in a list.
export function showFaults(faults) {
  for (const e of document.querySelectorAll(".fault")) e.textContent = "";
  for (const e of document.querySelectorAll("[aria-invalid]")) e.removeAttribute("aria-invalid");
  at("faults").replaceChildren(...faults.map(f => {
    let input = null;
    for (let p = f.path; p && !input; p = p.slice(0, Math.max(p.lastIndexOf("."), p.lastIndexOf("["), 0))) input = at("f-" + p);
    const said = (f.value ? `"${f.value}": ` : "") + f.wanted;
    if (input) {
      input.setAttribute("aria-invalid", "true");
      at(input.id + "-fault").textContent += said + " ";
      input.closest("details")?.setAttribute("open", "");
    }
    return element("li", {}, (f.line ? `Line ${f.line}: ` : "") + (f.path ? f.path + ": " : "") + said);
  }));
}

// Single values of the plan: a field with its label and its fault, a switch, and what can be added.
import {element, at} from "./element.js";
import {words, inBrackets} from "./words.js";

let offered = {words: {}, keys: {}};

// offer takes what can be chosen from.
export function offer(all) {
  offered = all;
  document.body.append(...Object.entries(all.words).map(([key, list]) => element("datalist", {id: "of-" + key}, list.map(w => element("option", {value: w})))));
}

// field is one value with its label and its fault.
// A map has a field for each of its keys, so that what stands around them is left alone.
export function field(desk, tree, path, key, name = words(key)) {
  const whole = path ? path + "." + key : key, id = "f-" + whole, value = tree?.[key];
  if (value && typeof value == "object" && !Array.isArray(value)) {
    return element("fieldset", {}, element("legend", {}, name), Object.keys(value).map(k => field(desk, value, whole, k)));
  }
  const list = Array.isArray(value) && value.every(v => typeof v != "object");
  const input = element("input", {id, value: inBrackets(value), "data-path": whole, autocomplete: "off", spellcheck: "false", list: list ? null : offered.words[key] ? "of-" + key : null, "aria-describedby": id + "-fault"});
  input.addEventListener("input", () => desk.typed(whole, input.value));
  return element("div", {class: "field"}, element("label", {for: id}, name), input, element("span", {class: "fault", id: id + "-fault"}));
}

// leftOut is the switch that leaves a thing out of the plan and keeps it in the file.
export function leftOut(desk, tree, path, name) {
  const id = "f-" + path + ".left_out";
  const box = element("input", {type: "checkbox", id, checked: isOut(tree)});
  box.addEventListener("change", () => desk.change([{path: path + ".left_out", value: box.checked ? "yes" : ""}], (box.checked ? "Without " : "Again with ") + name));
  return element("span", {class: "switch"}, box, element("label", {for: id}, "Leave out " + name), element("span", {class: "fault", id: id + "-fault"}));
}

export const isOut = tree => ["yes", "true"].includes(tree?.left_out);

// more offers the keys that a thing has not got.
export function more(desk, tree, path, kind) {
  const keys = (offered.keys[kind] ?? []).filter(k => tree?.[k] == null);
  const choice = element("select", {"aria-label": "One more figure of " + kind + ", " + path}, element("option", {value: ""}, "One more figure…"), keys.map(k => element("option", {value: k}, words(k))));
  choice.addEventListener("change", () => {
    if (!choice.value) return;
    choice.before(field(desk, {}, path, choice.value));
    at("f-" + path + "." + choice.value).focus();
    choice.value = "";
  });
  return choice;
}

export const button = (label, action, attributes = {}) => element("button", {type: "button", onclick: action, ...attributes}, label);

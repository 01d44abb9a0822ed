// Long searches: progress, stop, and taking an order over.
import {element, at} from "./element.js";
import {events} from "./calls.js";

let running = null;

export const stopSearch = () => running?.abort();

export async function search(desk, what) {
  stopSearch();
  const mine = running = new AbortController();
  at("stop").disabled = false;
  at("found").replaceChildren();
  at("progress").textContent = "Searching.";
  let end = "Stopped.";
  try {
    await events("search", {text: desk.text, search: what}, {
      progress: p => at("progress").textContent = `${p.done.toLocaleString("en")} ${p.of ? "of " + p.of.toLocaleString("en") : ""} expeditions simulated` + (p.left ? `; about ${Math.ceil(p.left)} s left.` : "."),
      superseded: () => end = "Ended: the plan was changed.",
      failed: why => end = why,
      found: f => { end = f.lines.join(" "); show(desk, f); },
    }, mine.signal);
  } catch (e) { if (e.name != "AbortError") end = e.message; }
  if (running != mine) return;
  running = null;
  at("stop").disabled = true;
  at("progress").textContent = end;
}

function show(desk, f) {
  at("found").replaceChildren(element("ol", {class: "found"}, f.proposals.map(p => element("li", {}, element("strong", {}, p.name), ": " + p.words + " ",
    p.order?.length ? element("button", {type: "button", onclick: () => desk.change("order", "[" + p.order.join(", ") + "]", "Order " + p.name)}, "Take this order over") : null))));
}

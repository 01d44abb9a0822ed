// Long searches: progress, stop, and taking over what was found.
import {element, at} from "./element.js";
import {events} from "./calls.js";
import {button} from "./fields.js";

let running = null;

export const stopSearch = () => running?.abort();

export async function search(desk, what, dates) {
  stopSearch();
  const mine = running = new AbortController();
  at("stop").disabled = false;
  at("found").replaceChildren();
  at("progress").textContent = "Simulating.";
  let end = "Stopped.";
  try {
    await events("search", {text: desk.text, search: what, dates}, {
      progress: p => at("progress").textContent = `${p.done.toLocaleString("en")} ${p.of ? "of " + p.of.toLocaleString("en") : ""} expeditions simulated` + (p.left ? `; about ${Math.ceil(p.left)} s left.` : "."),
      superseded: () => end = "Ended: the plan was changed, or another window asked.",
      found: f => { end = "Done."; show(desk, f); },
    }, mine.signal);
  } catch (e) { if (e.name != "AbortError") end = e.message; }
  if (running != mine) return;
  running = null;
  at("stop").disabled = true;
  at("progress").textContent = end;
}

function show(desk, f) {
  at("found").replaceChildren(...f.lines.map(l => element("p", {}, l)), element("ol", {class: "found"}, f.proposals.map(p => element("li", {}, element("strong", {}, p.name), ": " + p.words + " ",
    p.take?.length ? button("Take over", () => desk.change(p.take, p.name), {"aria-label": "Take over: " + p.name}) : null))));
}

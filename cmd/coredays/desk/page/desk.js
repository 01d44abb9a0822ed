// The desk: the text of the plan, its history, and what is asked about it.
import {at} from "./element.js";
import {call, events, download} from "./calls.js";
import {offer} from "./fields.js";
import {showPlan, showFaults} from "./plan.js";
import {showAnswer, showCheck, showDifference, showSea, inBrief, hide} from "./answer.js";
import {search, stopSearch} from "./search.js";
import {lookahead} from "./morning.js";
import {History} from "./history.js";
import {place} from "./words.js";
import {save, saveAs, showFile, watch, here} from "./saving.js";

const history = new History();
const desk = {text: "", tree: null, saved: "", digest: "", file: "", pinned: null, asking: null, refined: false, busy: false, queue: Promise.resolve()};

const say = text => at("said").textContent = text;

// settle makes a text the plan of the page. What one types in stays as it is; all else is made anew.
desk.settle = (text, name, key = "") => {
  if (text === desk.text && history.step) return;
  history.put(text, name, key);
  show(!key || key == "typed text");
};

function show(remake) {
  desk.text = history.step.text;
  desk.busy = remake;
  if (document.activeElement != at("text")) at("text").value = desk.text;
  showHistory();
  showFile(desk);
  ask(remake);
  here(desk);
}

const showHistory = () => history.show(n => { history.now = n; show(true); }, pin);

// ask has the plan of the page read and simulated; what was asked before ends.
async function ask(remake) {
  desk.asking?.abort();
  remake ||= desk.busy;
  const mine = desk.asking = new AbortController(), text = desk.text, step = history.step;
  desk.refined = false;
  hide("Simulating this plan.");
  if (desk.pinned) showDifference([`Pinned: ${desk.pinned.name}.`, "Comparing."]);
  const still = f => x => { if (desk.asking == mine && desk.text === text) f(x); };
  try {
    await events("answer", {text, pinned: desk.pinned?.text === text ? "" : desk.pinned?.text}, {
      read: still(r => {
        const tree = r.tree && typeof r.tree == "object" ? r.tree : null;
        if (tree && remake) { showPlan(desk, tree); document.title = at("title").textContent = tree.title ?? "The desk"; }
        desk.tree = tree ?? desk.tree;
        if (remake) desk.busy = false;
        showFaults(tree, r.faults);
        showCheck(r);
        if (r.faults.length) hide("No answer: the plan has faults, which stand beside their fields.");
        else if (r.stops?.length) hide("No answer: the check stops this plan.");
      }),
      answer: still(a => {
        showAnswer(a);
        if (a.rough) return;
        desk.refined = true;
        step.came = "(" + inBrief(a) + ")";
        showHistory();
        if (desk.pinned?.text === text) showDifference([`Pinned: ${desk.pinned.name}, the plan on screen. Change something to read the difference.`]);
      }),
      difference: still(lines => showDifference([`Pinned: ${desk.pinned.name}.`, ...lines])),
      sea: still(showSea),
      superseded: still(() => hide("A search, a report or another window took the processors. Change something here, or undo, to ask again.")),
      failed: still(why => hide("No answer: " + why)),
    }, mine.signal);
  } catch (e) { if (e.name != "AbortError") still(() => { desk.busy = false; hide("No answer: the desk has ended, or can't be reached. " + e.message); })(); }
}

// change makes edits in the text; edits wait for each other, typing does not wait for them.
// While the fields are made anew, what they say of places may be of the plan before: nothing is taken from them then.
desk.change = (edits, name, key = "") => {
  if (desk.busy) return say("One moment: the fields were being made anew.");
  desk.busy = !key;
  desk.queue = desk.queue.then(() => edited(edits, name, key)).catch(e => { desk.busy = false; say(e.message); });
};

async function edited(edits, name, key) {
  const {ok, body} = await call("edit", {text: history.before(key), edits});
  say(ok ? "" : "Not changed: " + (body.error ?? String(body)));
  if (ok && body.text !== desk.text) desk.settle(body.text, name, key);
  else {
    desk.busy = false;
    if (at("answer").classList.contains("stale")) ask(false); // the plan is what it was: so is its answer
  }
}

desk.typed = (path, value) => { if (!desk.busy) hide("Simulating this plan."); desk.change([{path, value}], `${place(desk.tree, path)}: ${value}`, "typed " + path); };
desk.reorder = (order, from, to) => {
  if (from == to || to < 0 || to >= order.length) return;
  const list = order.toSpliced(from, 1).toSpliced(to, 0, order[from]);
  desk.change([{path: "order", value: "[" + list.join(", ") + "]"}], "Order " + list.join(", "));
};

const step = by => { if (history.steps[history.now + by]) { history.now += by; show(true); } };

function pin(of) {
  desk.pinned = of;
  say(`Pinned: ${of.name}.`);
  ask(false);
}

const get = async (what, name) => {
  say("Writing it.");
  try { await download(what, {text: desk.text}, name); say(name + " was given to the browser to keep."); } catch (e) { say(e.message); }
};

// alone has something else take the processors, and asks again where it came before the refined answer.
const alone = async work => {
  desk.asking?.abort();
  const text = desk.text;
  await work();
  if (desk.text === text && !desk.refined) ask(false);
};

const actions = {
  save: () => save(desk), saveas: () => saveAs(desk), undo: () => step(-1), redo: () => step(1), pin: () => pin(history.step),
  report: () => alone(() => get("report", "report.html")), workbook: () => alone(() => get("workbook", "plan.xlsx")),
  orders: () => alone(() => search(desk, "orders")), cuts: () => alone(() => search(desk, "cuts")), stop: stopSearch,
};
for (const [id, action] of Object.entries(actions)) at(id).addEventListener("click", action);
at("departures").addEventListener("submit", e => { e.preventDefault(); alone(() => search(desk, "departures", at("dates").value)); });
at("text").addEventListener("input", () => desk.settle(at("text").value, "The text", "typed text"));
at("stepname").addEventListener("change", () => { history.step.name = at("stepname").value.trim() || history.step.name; showHistory(); });
addEventListener("keydown", e => {
  if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
  const action = {s: () => save(desk), z: () => step(e.shiftKey ? 1 : -1), y: () => step(1)}[e.key.toLowerCase()];
  if (action) { e.preventDefault(); action(); }
});

lookahead(desk, alone);
const {ok, body} = await call("open");
if (ok) {
  Object.assign(desk, {saved: body.text, digest: body.digest, file: body.file});
  offer(body.offers);
  const sails = body.text.match(/^sails: *(\d{4})-(\d\d)/m);
  if (sails) at("dates").value = `${sails[1]}-01-01..${sails[1]}-12-01/61d`;
  desk.settle(body.text, "As opened");
  watch(desk);
} else say(String(body));

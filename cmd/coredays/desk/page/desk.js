// The desk: the text of the plan, its history, and what is asked about it.
import {element, at} from "./element.js";
import {call, events, download} from "./calls.js";
import {showPlan, showFaults} from "./plan.js";
import {showAnswer, showDifference, hide} from "./answer.js";
import {search, stopSearch} from "./search.js";

const desk = {text: "", saved: "", digest: "", file: "", pinned: "", past: [], now: -1, asking: null, queue: Promise.resolve()};

const say = text => at("said").textContent = text;

// settle makes a text the plan of the page. A change of the same value goes on with the last entry of the history.
function settle(text, name, key = name) {
  if (text === desk.text && desk.now >= 0) return;
  if (desk.now >= 0 && desk.past[desk.now].key === key && key.startsWith("typed ")) desk.now--;
  desk.past.length = desk.now + 1;
  desk.past.push({text, name, key});
  desk.now++;
  show(!key.startsWith("typed ") || key == "typed text"); // what one types in stays as it is
}

function show(remake) {
  desk.text = desk.past[desk.now].text;
  if (document.activeElement != at("text")) at("text").value = desk.text;
  at("undo").disabled = desk.now == 0;
  at("redo").disabled = desk.now == desk.past.length - 1;
  at("save").disabled = desk.text === desk.saved;
  at("history").replaceChildren(...desk.past.map((p, n) => element("li", {"aria-current": n == desk.now ? "step" : null}, element("button", {type: "button", onclick: () => { desk.now = n; show(true); }}, p.name))));
  ask(remake);
}

// ask has the plan of the page read and simulated; what was asked before ends.
async function ask(remake) {
  desk.asking?.abort();
  const mine = desk.asking = new AbortController(), text = desk.text;
  hide("Simulating this plan.");
  let read = null;
  const still = f => x => { if (desk.asking == mine && desk.text === text) f(x); };
  try {
    await events("answer", {text, pinned: desk.pinned}, {
      read: still(r => {
        read = r;
        if (r.tree && typeof r.tree == "object" && remake) { showPlan(desk, r.tree); at("title").textContent = r.tree.title ?? "The desk"; }
        showFaults(r.faults);
        if (r.faults.length) hide("No answer: the plan has faults, beside their fields.");
        else if (r.stops?.length) hide("No answer: the check stops this plan. " + r.stops.join(" "));
      }),
      answer: still(a => showAnswer({...a, verdict: read?.verdict})),
      difference: still(showDifference),
      superseded: still(() => hide("Another window asked about a plan of this desk. Change something here, or undo, to ask again.")),
      failed: still(why => hide("No answer: " + why)),
    }, mine.signal);
  } catch (e) { if (e.name != "AbortError") still(() => hide("No answer: the desk has ended, or can't be reached. " + e.message))(); }
}

// change edits one value of the text; edits wait for each other, typing does not wait for them.
desk.change = (path, value, name = `${path} = ${value}`, key) => desk.queue = desk.queue.then(async () => {
  const last = desk.past[desk.now], base = last.key === key && desk.now > 0 ? desk.past[desk.now - 1].text : desk.text; // so that a value taken out and typed anew keeps its place
  const {ok, body} = await call("edit", {text: base, path, value});
  if (ok) settle(body.text, name, key); else say(body.error ?? String(body));
}).catch(e => say(e.message));
desk.typed = (path, value) => { hide("Simulating this plan."); desk.change(path, value, `${path} = ${value}`, "typed " + path); };
desk.reorder = (order, from, to) => {
  if (from == to || to < 0 || to >= order.length) return;
  const list = order.toSpliced(from, 1).toSpliced(to, 0, order[from]);
  desk.change("order", "[" + list.join(", ") + "]", "Order " + list.join(", "));
};

const step = by => { if (desk.past[desk.now + by]) { desk.now += by; show(true); } };

async function save(name = "") {
  const text = desk.text, {ok, status, body} = await call("save", {text, digest: desk.digest, name});
  if (status == 409) return conflict(body);
  if (!ok) return say("Not saved: " + (body.error ?? body));
  Object.assign(desk, {saved: text, digest: body.digest, file: body.file});
  at("file").textContent = body.file;
  at("save").disabled = desk.text === desk.saved;
  say("Saved to " + body.file + ".");
}

// conflict shows what somebody else wrote, beside the plan of the page.
function conflict(theirs) {
  const close = () => { at("conflict").hidden = true; };
  at("conflict").replaceChildren(
    element("p", {}, `Not saved: ${theirs.file} was changed by somebody else. Theirs is below, yours is in the plan.`),
    element("textarea", {readonly: true, rows: 10, "aria-label": "The file as somebody else left it"}, theirs.text),
    element("div", {class: "tools"},
      element("button", {type: "button", onclick: () => { Object.assign(desk, {digest: theirs.digest, saved: theirs.text}); settle(theirs.text, "As somebody else left it"); close(); }}, "Go on with theirs"),
      element("button", {type: "button", onclick: () => { desk.digest = theirs.digest; close(); save(); }}, "Save mine over it")));
  at("conflict").hidden = false;
  at("conflict").querySelector("button").focus();
}

function pin() {
  desk.pinned = desk.text;
  showDifference([`Pinned: ${desk.past[desk.now].name}. Change the plan to read the difference.`]);
}

const get = (what, name) => download(what, {text: desk.text}, name).catch(e => say(e.message));

const actions = {
  save: () => save(), saveas: () => { const name = prompt("Name of the new file, beside the scenario, such as other.yaml"); if (name) save(name); },
  undo: () => step(-1), redo: () => step(1), pin, report: () => get("report", "report.html"), workbook: () => get("workbook", "plan.xlsx"),
  orders: () => search(desk, "orders"), cuts: () => search(desk, "cuts"), stop: stopSearch,
};
for (const [id, action] of Object.entries(actions)) at(id).addEventListener("click", action);
at("text").addEventListener("input", () => settle(at("text").value, "The text", "typed text"));
addEventListener("keydown", e => {
  if (!(e.ctrlKey || e.metaKey)) return;
  const action = {s: () => save(), z: () => step(e.shiftKey ? 1 : -1), y: () => step(1)}[e.key.toLowerCase()];
  if (action) { e.preventDefault(); action(); }
});
addEventListener("beforeunload", e => { if (desk.text !== desk.saved) e.preventDefault(); });

const {ok, body} = await call("open");
if (ok) {
  Object.assign(desk, {saved: body.text, digest: body.digest, file: body.file});
  at("file").textContent = body.file || "The built-in demonstration, an invented expedition. Save it under a name to keep what you change.";
  settle(body.text, "As opened");
} else say(String(body));

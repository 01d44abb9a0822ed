// The file: saved whole, never over somebody else's change, and watched while it is open.
import {element, at} from "./element.js";
import {call, tell, name} from "./calls.js";
import {button} from "./fields.js";

const say = text => at("said").textContent = text;

export const unsaved = desk => desk.text !== desk.saved;

export function showFile(desk) {
  at("file").textContent = desk.file || "The built-in demonstration, an invented expedition. Save it under a name to keep what you change.";
  at("save").disabled = !unsaved(desk);
}

export async function save(desk, as = "") {
  if (!as && !desk.file) return saveAs(desk);
  const text = desk.text, {ok, status, body} = await call("save", {text, digest: desk.digest, name: as});
  if (status == 409) return conflict(desk, body);
  if (!ok) return say("Not saved: " + (body.error ?? body));
  Object.assign(desk, {saved: text, digest: body.digest, file: body.file});
  at("saveform").hidden = true;
  at("conflict").hidden = true;
  showFile(desk);
  say("Saved to " + body.file + ".");
  here(desk);
}

export function saveAs(desk) {
  at("saveform").hidden = false;
  if (!at("savename").value) at("savename").value = "another-plan.yaml";
  at("savename").focus();
  at("savename").select();
}

// conflict shows what somebody else wrote, beside the plan of the page.
function conflict(desk, theirs) {
  const close = () => { at("conflict").hidden = true; };
  at("conflict").replaceChildren(
    element("p", {}, `Not saved: ${theirs.file} was changed elsewhere since it was read here. Theirs is below, yours is in the plan.`),
    element("textarea", {readonly: true, rows: 10, "aria-label": "The file as somebody else left it"}, theirs.text),
    element("div", {class: "tools"},
      button("Go on with theirs", () => { Object.assign(desk, {digest: theirs.digest, saved: theirs.text}); desk.settle(theirs.text, "As somebody else left it"); close(); }),
      button("Save mine over it", () => { desk.digest = theirs.digest; close(); save(desk); })));
  at("conflict").hidden = false;
  at("conflict").querySelector("button").focus();
}

let told = "";

// here tells the server that this window is open, and looks whether the file is still the one it knows.
export async function here(desk) {
  let answer;
  try { answer = await call("here", {unsaved: unsaved(desk)}); } catch { return; }
  if (!answer.ok) return;
  const {digest, file, ending} = answer.body;
  if (ending && unsaved(desk) && told != "ending") { told = "ending"; say("The desk was asked to end where it was started. Save, or close this page; it waits."); }
  if (!digest || digest == desk.digest || told == digest) return;
  told = digest;
  if (unsaved(desk)) return say((file || "The file") + " was changed elsewhere. Yours is unsaved: saving shows both.");
  const {ok, body} = await call("open");
  if (!ok || unsaved(desk)) return;
  Object.assign(desk, {saved: body.text, digest: body.digest, file: body.file});
  desk.settle(body.text, "As saved elsewhere");
  showFile(desk);
  say(body.file + " was changed elsewhere; this is how it is now. Undo has what was here.");
}

// watch says hello now and then, and goodbye.
export function watch(desk) {
  setInterval(() => here(desk), 2000);
  addEventListener("pagehide", () => tell("here", {window: name, gone: true}));
  addEventListener("pageshow", () => here(desk));
  addEventListener("beforeunload", e => { if (unsaved(desk)) e.preventDefault(); });
  at("saveform").addEventListener("submit", e => { e.preventDefault(); save(desk, at("savename").value.trim()); });
  at("savenot").addEventListener("click", () => { at("saveform").hidden = true; at("saveas").focus(); });
}

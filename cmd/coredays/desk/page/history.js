// What was tried: texts of the plan, each with a name and what came out.
import {element, at} from "./element.js";
import {button} from "./fields.js";

const most = 500; // steps kept

export class History {
  steps = [];
  now = -1;
  get step() { return this.steps[this.now]; }

  // put makes a text the newest step. Typing on in the same value goes on with the last step.
  put(text, name, key = "") {
    if (key && this.step?.key === key) this.now--;
    this.steps.length = this.now + 1;
    this.steps.push({text, name, key, came: ""});
    if (this.steps.length > most) this.steps.splice(1, 1); // the first stays: as opened
    this.now = this.steps.length - 1;
  }

  // before is the text before a value was typed on, so that a value taken out and typed anew keeps its place.
  before(key) { return key && this.step.key === key && this.now > 0 ? this.steps[this.now - 1].text : this.step.text; }

  show(go, pin) {
    at("undo").disabled = this.now <= 0;
    at("redo").disabled = this.now == this.steps.length - 1;
    if (document.activeElement != at("stepname")) at("stepname").value = this.step.name;
    at("history").replaceChildren(...this.steps.map((s, n) => element("li", {"aria-current": n == this.now ? "step" : null},
      button(s.name, () => go(n), {class: "link", title: "Go to this plan"}), s.came ? " " + s.came + " " : " ", button("Pin", () => pin(s), {"aria-label": "Pin: " + s.name}))));
  }
}

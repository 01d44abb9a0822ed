// The look-ahead: the ship's log, dropped on the page or chosen, gives the morning page.
import {element, at} from "./element.js";
import {call} from "./calls.js";
import {figure} from "./answer.js";

const kinds = {log: "Operations log", cores: "Core table, if there is one", forecast: "Forecast of waves, if there is one", state: "What the log does not tell (YAML), if needed"};
const papers = {};

// kindOf tells what a dropped file is by its name and the headings of its columns.
async function kindOf(file) {
  if (/\.ya?ml$/i.test(file.name)) return "state";
  const head = (await file.slice(0, 2000).text()).toLowerCase();
  if (/\bhs(_m)?\b/.test(head) && !/\bwhat\b/.test(head)) return "forecast";
  const titles = head.split("\n").find(l => !l.startsWith("#") && /[,;\t]/.test(l)) ?? "";
  return /recovered|\bcore\b/.test(titles) && !/\bwhat\b/.test(titles) ? "cores" : "log";
}

const read = file => new Promise((done, failed) => {
  const reader = new FileReader();
  reader.onload = () => done({name: file.name, data: reader.result.slice(reader.result.indexOf(",") + 1)});
  reader.onerror = () => failed(reader.error);
  reader.readAsDataURL(file);
});

async function take(kind, file, look) {
  if (file.size > 4e6) { at("aheadsaid").textContent = file.name + " is larger than 4 MB."; return; }
  papers[kind] = await read(file);
  at("aheadsaid").textContent = Object.entries(papers).map(([k, p]) => kinds[k].split(",")[0] + ": " + p.name).join("; ") + ".";
  if (papers.log) await look();
}

export function lookahead(desk, alone) {
  const look = () => alone(async () => {
    at("aheadsaid").textContent = "Simulating the rest of the expedition from " + papers.log.name + ".";
    for (const rough of [true, false]) { // the first answer within a second
      const {ok, body} = await call("morning", {text: desk.text, papers, rough});
      at("aheadsaid").textContent = ok ? (rough ? "Rough, refining: " : "") + "from " + Object.values(papers).map(p => p.name).join(", ") + " and the plan on screen." : String(body.error ?? body);
      at("ahead").replaceChildren(...(ok ? [element("pre", {tabindex: "0", "aria-label": "Morning page"}, body.text), ...body.charts.map(figure)] : []));
      if (!ok) return;
    }
  });
  at("papers").replaceChildren(...Object.entries(kinds).map(([kind, name]) => {
    const input = element("input", {type: "file", id: "paper-" + kind});
    input.addEventListener("change", () => { if (input.files[0]) take(kind, input.files[0], look); });
    return element("div", {class: "row"}, element("label", {for: "paper-" + kind}, name), input);
  }));
  const files = e => [...e.dataTransfer?.types ?? []].includes("Files");
  addEventListener("dragover", e => { if (files(e)) e.preventDefault(); });
  addEventListener("drop", async e => {
    if (!files(e)) return;
    e.preventDefault();
    at("lookahead").open = true;
    for (const file of e.dataTransfer.files) await take(await kindOf(file), file, async () => {});
    if (papers.log) await look();
    at("lookahead").scrollIntoView();
  });
}

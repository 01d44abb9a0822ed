// Calls to the server. The address of the page holds the secret; relative paths keep it.
const head = {"Content-Type": "application/json", "X-Coredays-Desk": "1"};

// name is that of this window; its questions are counted, so that none that was overtaken on the way ends a newer one.
export const name = crypto.randomUUID();
let asked = 0;

const post = (what, question, signal) => fetch(what, {method: "POST", headers: head, body: JSON.stringify({...question, window: name, number: ++asked}), signal});

// call gives the status and what was answered.
export async function call(what, question) {
  const answer = await post(what, question);
  const text = await answer.text();
  let body = text;
  try { body = JSON.parse(text); } catch { /* a sentence */ }
  return {ok: answer.ok, status: answer.status, body};
}

// events hands each event of a stream to its reader until the stream ends or the signal stops it.
export async function events(what, question, readers, signal) {
  const answer = await post(what, question, signal);
  if (!answer.ok) throw new Error(await answer.text());
  const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  for (let rest = ""; ;) {
    const {done, value} = await reader.read();
    if (done) return;
    const blocks = (rest + value).split("\n\n");
    rest = blocks.pop();
    for (const block of blocks) {
      const [name, data] = block.split("\n");
      readers[name.slice("event: ".length)]?.(JSON.parse(data.slice("data: ".length)));
    }
  }
}

// download asks for a file and has the browser keep it.
export async function download(what, question, name) {
  const answer = await post(what, question);
  if (!answer.ok) throw new Error(await answer.text());
  const link = document.createElement("a");
  link.href = URL.createObjectURL(await answer.blob());
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

// tell says something on the way out, when nobody waits for an answer.
export const tell = (what, question) => fetch(what, {method: "POST", headers: head, body: JSON.stringify(question), keepalive: true}).catch(() => {});

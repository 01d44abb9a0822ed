// Words for keys, paths and values.
export const words = key => key.replaceAll("_", " ");

// inBrackets is a value as it would be typed in the file on one line.
export function inBrackets(value) {
  if (Array.isArray(value)) return "[" + value.map(inBrackets).join(", ") + "]";
  if (value && typeof value == "object") return "{" + Object.entries(value).map(([k, v]) => k + ": " + inBrackets(v)).join(", ") + "}";
  return String(value ?? "");
}

export const nameOf = item => item?.task != null ? "task " + item.task : "hole " + (item?.name ?? "");

// place says where a path leads in words: "site SB-01, hole A, water depth".
export function place(tree, path) {
  const parts = [];
  let at = tree, list = "";
  for (const [, key, number] of (path ?? "").matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    if (number == null) {
      at = at?.[key];
      list = key;
      if (!Array.isArray(at)) parts.push(words(key));
      continue;
    }
    at = at?.[number];
    if (list == "sites") parts.push("site " + (at?.name ?? Number(number) + 1));
    else if (list == "holes") parts.push(nameOf(at));
    else parts.push({layers: "layer", core: "stage"}[list] ?? words(list), String(Number(number) + 1));
  }
  return parts.join(", ").replaceAll(/(layer|stage), /g, "$1 ");
}

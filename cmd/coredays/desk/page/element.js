// An element with attributes, listeners (on…) and contents; texts are never read as HTML.
export function element(name, attributes = {}, ...contents) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) made.addEventListener(key.slice(2), value);
    else if (value === true) made.setAttribute(key, "");
    else if (value !== false && value != null) made.setAttribute(key, value);
  }
  made.append(...contents.flat().filter(c => c != null));
  return made;
}

export const at = id => document.getElementById(id);

// The track on a map: longitude shrunk by the cosine of the middle latitude, as over one ocean it may be.
const drawn = (name, attributes, text = "") => {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.textContent = text;
  return made;
};

export function map(track) {
  const lines = track.features.filter(f => f.geometry.type != "Point").flatMap(f => f.geometry.type == "LineString" ? [f.geometry.coordinates] : f.geometry.coordinates);
  const marks = track.features.filter(f => f.geometry.type == "Point");
  const all = [...lines.flat(), ...marks.map(m => m.geometry.coordinates)];
  if (!all.length) return null;
  const wide = Math.max(...all.map(p => p[0])) - Math.min(...all.map(p => p[0])) > 180; // across the date line
  const east = lon => wide && lon < 0 ? lon + 360 : lon, lats = all.map(p => p[1]), lons = all.map(p => east(p[0]));
  const shrink = Math.cos((Math.min(...lats) + Math.max(...lats)) / 2 * Math.PI / 180);
  const across = Math.max((Math.max(...lons) - Math.min(...lons)) * shrink, 0.1), down = Math.max(Math.max(...lats) - Math.min(...lats), 0.1);
  const scale = Math.min(560 / across, 320 / down), height = down * scale + 60;
  const x = p => 30 + (east(p[0]) - Math.min(...lons)) * shrink * scale, y = p => 30 + (Math.max(...lats) - p[1]) * scale;
  const names = marks.map(m => m.properties.name).join(", ");
  const svg = drawn("svg", {viewBox: `0 0 ${across * scale + 110} ${height}`, class: "map", role: "img", "aria-label": "Map of the track: " + names});
  for (const line of lines) svg.append(drawn("path", {d: "M" + line.map(p => x(p).toFixed(1) + "," + y(p).toFixed(1)).join("L")}));
  for (const m of marks) {
    const p = m.geometry.coordinates;
    svg.append(drawn("circle", {cx: x(p), cy: y(p), r: 4}), drawn("text", {x: x(p) + 7, y: y(p) - 5}, m.properties.name));
  }
  return svg;
}

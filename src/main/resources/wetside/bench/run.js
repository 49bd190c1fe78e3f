"use strict";
// The page of a run: leaves orders, draws the pictures it is sent. It keeps no state of the machine.
(() => {
  const root = document.getElementById("run");
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  const $ = id => document.getElementById(id);
  const svg = (tag, attributes, words) => {
    const e = document.createElementNS("http://www.w3.org/2000/svg", tag);
    for (const [k, v] of Object.entries(attributes)) e.setAttribute(k, v);
    if (words !== undefined) e.textContent = words;
    return e;
  };
  let name = "", source = null, picture = null, shown = [];
  const all = {rows: [], band: []};

  const trouble = words => { $("trouble").textContent = words; $("trouble").hidden = words === ""; };
  const say = (element, words) => { if (element.textContent !== words) element.textContent = words; };
  async function order(what, fields) {
    if (!name) return;
    try {
      const answer = await fetch(`/runs/${name}/${what}`, {method: "POST", body: new URLSearchParams(fields || {})});
      if (answer.status === 404) trouble("This run has ended. Load the page again for a new one.");
      else if (!answer.ok) trouble("That was not done. Try it again.");
      else trouble("");
    } catch (e) { trouble("The bench does not answer. Is it still running?"); }
  }

  // Controls
  const clockWords = t => { const s = Math.floor(t); const m = Math.floor(s / 60); return m < 60 ? `${m}:${String(s % 60).padStart(2, "0")}` : `${Math.floor(m / 60)}:${String(m % 60).padStart(2, "0")}:${String(s % 60).padStart(2, "0")}`; };
  const heat = kelvin => root.dataset.heat === "°F" ? `${(kelvin * 1.8 - 459.67).toFixed(1)} °F` : `${(kelvin - 273.15).toFixed(1)} °C`;
  const held = new Map();
  function slideWords(c, v) {
    c.querySelector("output").textContent = c.dataset.heat === "true" ? heat(v) : `${Math.round(100 * v)} %`;
  }
  root.addEventListener("input", e => {
    const c = e.target.closest(".control");
    if (!c || e.target.type !== "range") return;
    held.set(c, Date.now());
    slideWords(c, Number(e.target.value));
  });
  root.addEventListener("change", e => {
    const c = e.target.closest(".control");
    if (!c) return;
    held.set(c, Date.now());
    order("handle", {handle: c.dataset.handle, value: e.target.value});
  });
  const controls = [...root.querySelectorAll(".control")];
  function showControls(h) {
    for (const c of controls) {
      if (Date.now() - (held.get(c) || 0) < 900) continue;
      const v = h[c.dataset.index];
      const range = c.querySelector("input[type=range]");
      if (range) {
        if (document.activeElement !== range || Math.abs(range.value - v) > range.step * 1.5) range.value = v;
        slideWords(c, v);
      } else {
        const radio = c.querySelectorAll("input")[Math.round(v)];
        if (radio && !radio.checked) radio.checked = true;
      }
    }
  }
  $("pause").addEventListener("click", () => order("pause", {pause: picture && picture.paused ? "no" : "yes"}));
  const times = () => Math.round(Math.exp(Math.log(200) * $("speed").value / 100));
  $("speed").addEventListener("input", () => say($("pace"), `×${times()}`));
  $("speed").addEventListener("change", () => order("speed", {times: times()}));
  $("routine").addEventListener("change", e => {
    const to = e.target.value;
    e.target.value = "";
    if (to === "-") order("cold"); else if (to) order("bring", {routine: to});
  });
  $("bring").addEventListener("submit", e => e.preventDefault());

  // Breaking
  const faults = [...$("fault").options];
  $("seek").addEventListener("input", e => {
    const words = e.target.value.toLowerCase().split(/\s+/);
    $("fault").replaceChildren(...faults.filter(o => words.every(w => o.textContent.toLowerCase().includes(w))));
    if ($("fault").options.length === 1) $("fault").selectedIndex = 0;
  });
  $("far").addEventListener("input", e => say($("howfar"), `${e.target.value} %`));
  $("break").addEventListener("submit", e => {
    e.preventDefault();
    const o = $("fault").selectedOptions[0];
    if (o) order("break", {part: o.dataset.part, fault: o.value, far: $("far").value / 100, compare: $("compare").checked ? "yes" : "no"});
  });
  $("mend").addEventListener("click", () => order("mend"));
  $("flows").addEventListener("click", e => {
    const a = e.target.closest("a[data-part]");
    if (!a || e.ctrlKey || e.metaKey) return;
    e.preventDefault();
    $("seek").value = "";
    $("fault").replaceChildren(...faults.filter(o => o.dataset.part === a.dataset.part));
    document.querySelectorAll("#flows a.chosen").forEach(x => x.classList.remove("chosen"));
    a.classList.add("chosen");
  });

  // Instruments
  const digits = v => v === null ? "–" : Math.abs(v) >= 100 ? v.toFixed(0) : Math.abs(v) >= 10 ? v.toFixed(1) : v.toFixed(2);
  const seen = (kind, see) => root.querySelectorAll(`[data-${kind}]`).forEach(e => see(e, Number(e.dataset[kind])));
  function instruments(p) {
    seen("gauge", (e, i) => {
      const v = p.v[i], n = e.querySelector(".needle");
      n.setAttribute("transform", `rotate(${(-135 + 270 * Math.max(-0.02, Math.min(1.02, v / n.dataset.most))).toFixed(1)} 75 75)`);
      say(e.querySelector("output"), v === null ? "–" : v.toFixed(n.dataset.most > 30 ? 0 : v < 3 ? 2 : 1));
    });
    seen("figure", (e, i) => say(e.querySelector("output"), p.v[i] === null ? "–" : p.v[i].toFixed(1)));
    seen("glass", (e, i) => {
      const v = e.dataset.vessel === "true" ? p.l[i] : p.v[i];
      const share = Math.max(0, Math.min(1, v / e.dataset.most)), y = 106 - 102 * share;
      const water = e.querySelector(".water");
      water.setAttribute("y", y); water.setAttribute("height", 106 - y);
      e.querySelector(".surface").setAttribute("d", `M12 ${y}h16`);
      say(e.querySelector("output"), `${Math.round(100 * share)} %`);
    });
    seen("lamp", (e, i) => {
      const words = e.dataset.options.split("|")[p.v[i]] || "";
      e.classList.toggle("on", words !== "dark");
      say(e.querySelector("output"), words);
    });
    seen("word", (e, i) => say(e.querySelector("output"), e.dataset.options.split("|")[p.v[i]] || "–"));
  }

  // Charts: one strip for each unit, up to three lines in it
  const charts = $("charts");
  const boxes = [...root.querySelectorAll(".channels input")];
  function strips() {
    const made = [];
    shown.forEach((c, k) => {
      let s = made.find(m => m.unit === c.unit && m.lines.length < 3);
      if (!s) made.push(s = {unit: c.unit, lines: []});
      s.lines.push({...c, column: k + 1, sound: shown.length + k + 1});
    });
    return made;
  }
  function tick(span, n) {
    const p = Math.pow(10, Math.floor(Math.log10(span / n)));
    return [1, 2, 5, 10].map(f => f * p).find(s => span / s <= n);
  }
  /** A strip shows at least so much: what hardly stirs must not fill it. */
  const least = {bar: 1, psi: 15, "°C": 10, "°F": 20, W: 100, "g/s": 1};
  /** A name in at most two lines of so many signs. */
  function folded(name, most) {
    if (name.length <= most) return [name];
    const cut = name.lastIndexOf(" ", most);
    const rest = name.slice(cut > 0 ? cut + 1 : most);
    return [name.slice(0, cut > 0 ? cut : most), rest.length > most ? rest.slice(0, most - 1) + "…" : rest];
  }
  let drawnAt = 0;
  function draw() {
    drawnAt = Date.now();
    const made = strips(), width = Math.max(320, charts.clientWidth), left = width < 560 ? 150 : 190, right = width - 24, H = width < 560 ? 92 : 80, gap = 26;
    const height = Math.max(1, made.length) * (H + gap) + 26;
    charts.setAttribute("viewBox", `0 0 ${width} ${height}`);
    charts.setAttribute("height", height);
    const out = [];
    const now = picture ? picture.t : 0, late = $("late").checked;
    const start = late ? Math.max(0, now - 120) : 0, end = late ? start + 120 : Math.max(60, now);
    const x = t => left + (right - left) * (t - start) / (end - start);
    const seconds = end - start <= 180, step = seconds ? tick(end - start, 6) : 60 * tick(end / 60, 7);
    const rows = all.rows.filter(r => r[0] >= start), band = all.band.filter(r => r[0] >= start);
    made.forEach((s, row) => {
      const top = 16 + row * (H + gap);
      let low = 0, high = 0;
      for (const r of rows) for (const l of s.lines) for (const k of [l.column, l.sound]) if (r[k] !== null && r[k] !== undefined) { low = Math.min(low, r[k]); high = Math.max(high, r[k]); }
      for (const r of band) for (const l of s.lines) { low = Math.min(low, r[l.column] ?? low); high = Math.max(high, r[l.sound] ?? high); }
      if (high - low < (least[s.unit] || 1)) high = low + (least[s.unit] || 1);
      const t = tick(high - low, 3);
      low = Math.floor(low / t) * t; high = Math.ceil(high / t - 1e-9) * t;
      const y = v => top + H * (1 - (v - low) / (high - low));
      for (let v = low; v <= high + t / 2; v += t) {
        out.push(svg("path", {class: "grid", d: `M${left} ${y(v)}H${right}`, "stroke-width": 1}));
        out.push(svg("text", {class: "small", x: left - 8, y: y(v) + 4.5, "text-anchor": "end"}, String(Math.round(v * 1000) / 1000)));
      }
      for (let v = Math.ceil(start / step) * step; v <= end; v += step) {
        out.push(svg("path", {class: "grid", d: `M${x(v)} ${top}V${top + H}`}));
        if (row === made.length - 1) out.push(svg("text", {class: "small", x: x(v), y: top + H + 18, "text-anchor": "middle"}, `${!seconds ? v / 60 : late ? clockWords(v) : v}${v + step > end && !late ? seconds ? " s" : " min" : ""}`));
      }
      const area = (from, to) => {
        const there = band.filter(r => r[from] !== null && r[to] !== null);
        return there.length < 2 ? "" : "M" + there.map(r => `${x(r[0]).toFixed(1)} ${y(r[to]).toFixed(1)}`).join("L") + "L" + there.reverse().map(r => `${x(r[0]).toFixed(1)} ${y(r[from]).toFixed(1)}`).join("L") + "Z";
      };
      s.lines.forEach(l => out.push(svg("path", {class: "sane", d: area(l.column, l.sound)})));
      const path = k => { let d = "", pen = false; for (const r of rows) { const v = r[k]; if (v === null || v === undefined) { pen = false; continue; } d += `${pen ? "L" : "M"}${x(r[0]).toFixed(1)} ${y(v).toFixed(1)}`; pen = true; } return d; };
      if (picture && picture.compared) s.lines.forEach(l => out.push(svg("path", {class: "sound", d: path(l.sound)})));
      let down = top + 6;
      s.lines.forEach((l, i) => {
        out.push(svg("path", {class: `l${i}`, d: path(l.column)}));
        const value = picture ? picture.v[l.reading] : null;
        const names = folded(l.name.replace(/, temperature$/, ""), Math.floor((left - 44) / 7));
        for (const words of s.lines.length > 2 ? names.slice(0, 1) : names) { out.push(svg("text", {class: "name", x: 14, y: down}, words)); down += 15; }
        out.push(svg("text", {class: "small", x: 14, y: down}, `${["", "dashed ", "dotted "][i]}${digits(value)} ${l.unit}`));
        down += 18;
      });
    });
    if (!made.length) out.push(svg("text", {class: "small", x: 14, y: 30}, "Choose readings to see their course."));
    charts.replaceChildren(...out);
  }

  // Flows on the map: heads travel along the lines, faster with more flow
  const lines = new Map();
  root.querySelectorAll("#flows g[data-line]").forEach(g => {
    const i = Number(g.dataset.line), path = g.querySelector('path[fill="none"]');
    if (path && !lines.has(i)) lines.set(i, {g, path, length: path.getTotalLength(), heads: [], at: 0});
  });
  let lastFrame = 0;
  function move(now) {
    requestAnimationFrame(move);
    const dt = Math.min(0.1, (now - lastFrame) / 1000);
    lastFrame = now;
    const visible = document.visibilityState === "visible" && $("flows").offsetParent;
    if (!picture || !visible) return;
    for (const [i, l] of lines) {
      const f = picture.f[i] || 0;
      const count = f === 0 || l.length < 14 ? 0 : Math.max(1, Math.round(l.length / 90));
      while (l.heads.length > count) l.heads.pop().remove();
      while (l.heads.length < count) { const h = svg("path", {class: "moving", d: "M7 0L-5 5.5L-5 -5.5z"}); l.g.append(h); l.heads.push(h); }
      if (!count) { if (l.words) { l.words.remove(); l.words = null; } continue; }
      const pace = picture.paused || still.matches ? 0 : Math.min(60, 6 + 9 * Math.sqrt(Math.abs(f) * 1e3));
      l.at = (l.at + Math.sign(f) * pace * dt + l.length) % l.length;
      l.heads.forEach((h, k) => {
        const s = (l.at + k * l.length / count) % l.length;
        const a = l.path.getPointAtLength(s), b = l.path.getPointAtLength(Math.min(l.length, s + 1)), c = l.path.getPointAtLength(Math.max(0, s - 1));
        const turn = Math.atan2(b.y - c.y, b.x - c.x) * 180 / Math.PI + (f < 0 ? 180 : 0);
        h.setAttribute("transform", `translate(${a.x.toFixed(1)} ${a.y.toFixed(1)}) rotate(${turn.toFixed(0)})`);
      });
      if (still.matches && l.length > 60) {
        if (!l.words) { l.words = svg("text", {class: "amount", "text-anchor": "middle"}); l.g.append(l.words); }
        const m = l.path.getPointAtLength(l.length / 2);
        l.words.setAttribute("x", m.x); l.words.setAttribute("y", m.y - 9);
        say(l.words, `${Number(Math.abs(f * 1e3).toPrecision(2))} g/s`);
      }
    }
  }
  requestAnimationFrame(move);

  // Pictures
  function see(p) {
    picture = p;
    if (p.over) all.rows = [];
    all.rows.push(...p.rows);
    if (p.bandOver) all.band = [];
    all.band.push(...p.band);
    $("sound").hidden = !p.compared;
    say($("clock"), clockWords(p.t));
    say($("pause"), p.paused ? "Go on" : "Pause");
    $("pause").setAttribute("aria-pressed", p.paused);
    if (document.activeElement !== $("speed")) $("speed").value = Math.round(100 * Math.log(p.speed) / Math.log(200));
    const real = Math.round(p.pace);
    say($("pace"), p.hurrying ? `hurrying, ×${real}` : !p.paused && p.speed > 2 && real < 0.8 * p.speed ? `×${Math.round(p.speed)}, runs ×${real}` : `×${Math.round(p.speed)}`);
    showControls(p.h);
    instruments(p);
    if (p.anew) $("happened").replaceChildren();
    for (const [t, words] of p.e) {
      const li = document.createElement("li"), time = document.createElement("time"), span = document.createElement("span");
      time.textContent = clockWords(t); span.textContent = words;
      li.append(time, span);
      $("happened").prepend(li);
    }
    say($("balance"), p.balance);
    if (p.trouble) trouble(p.trouble);
    if (Date.now() - drawnAt > 240 && charts.clientWidth) draw();
  }
  const chosen = () => boxes.filter(b => b.checked).slice(0, 12).map(b => ({reading: Number(b.value), name: b.dataset.name, unit: b.dataset.unit}));
  function listen() {
    shown = chosen();
    if (source) source.close();
    all.rows = [];
    all.band = [];
    $("happened").replaceChildren();
    source = new EventSource(`/runs/${name}/pictures?show=${shown.map(c => c.reading).join(",")}`);
    source.addEventListener("picture", e => see(JSON.parse(e.data)));
    source.addEventListener("over", () => { source.close(); trouble("This run has ended. Load the page again for a new one."); });
    let failed = 0;
    source.onopen = () => { failed = 0; trouble(""); $("happened").replaceChildren(); };
    source.onerror = () => { if (++failed > 3) { source.close(); trouble("The run has ended, or the bench does not answer. Load the page again."); } };
  }
  boxes.forEach(b => b.addEventListener("change", listen));
  document.querySelectorAll(".tabs input, #late").forEach(r => r.addEventListener("change", draw));
  // Another unit loads the page again; the run goes on and is found by its name.
  let staying = false;
  document.querySelector(".units form").addEventListener("submit", e => {
    if (!name) return;
    staying = true;
    e.target.elements.back.value = `${location.pathname}?run=${name}`;
  });
  addEventListener("pagehide", () => { if (name && !staying) navigator.sendBeacon(`/runs/${name}/end`); });
  addEventListener("pageshow", e => { if (e.persisted) location.reload(); });

  // As high as they will be: nothing moves when the first picture comes.
  shown = chosen();
  draw();
  (async () => {
    const query = new URLSearchParams(location.search);
    if (query.get("show") === "map") document.querySelector(".tabs [value=map]").checked = true;
    const before = query.get("run");
    if (before) history.replaceState(null, "", location.pathname);
    const there = before && (await fetch(`/runs/${before}/scenario.yaml`)).ok;
    const answer = there ? null : await fetch(root.dataset.start, {method: "POST"});
    const said = there ? before : await answer.text();
    if (!there && !answer.ok) return trouble(answer.status === 503 ? said : "The run could not be started.");
    name = said;
    $("save").href = `/runs/${name}/scenario.yaml`;
    listen();
    if (query.get("bring")) order("bring", {routine: query.get("bring")});
  })().catch(() => trouble("The bench does not answer. Is it still running?"));
})();

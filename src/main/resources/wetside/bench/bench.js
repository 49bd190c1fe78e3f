"use strict";
// Every form works without this file; it saves a look-up, a scroll and a sheet of paper.

// Intake: what is typed is looked up while it is typed.
const intake = document.querySelector("form[data-intake]");
if (intake) {
  let wait, latest = 0;
  const look = async () => {
    const turn = ++latest;
    const typed = new URLSearchParams(new FormData(intake));
    const answer = await fetch(intake.dataset.intake + "?" + typed);
    if (!answer.ok || turn !== latest) return;
    const found = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const id of ["intake-machine", "intake-signs"]) {
      const here = document.getElementById(id), fresh = found.getElementById(id);
      // What somebody is typing into or choosing from stays as it is.
      if (id === "intake-machine" && here.contains(document.activeElement)) continue;
      if (here.innerHTML === fresh.innerHTML) continue;
      const held = here.contains(document.activeElement) ? document.activeElement : null;
      here.replaceWith(fresh);
      if (held) [...fresh.querySelectorAll("input")].find(i => i.name === held.name && i.value === held.value)?.focus();
    }
  };
  intake.addEventListener("input", () => { clearTimeout(wait); wait = setTimeout(look, 180); });
  intake.addEventListener("click", e => {
    const choice = e.target.closest("[data-who]");
    if (!choice) return;
    e.preventDefault();
    document.getElementById("who").value = choice.dataset.who;
    document.getElementById("complaint").focus();
    look();
  });
}

// What folds out of the top closes like any menu.
for (const menu of document.querySelectorAll(".top details")) {
  document.addEventListener("click", e => { if (menu.open && !menu.contains(e.target)) menu.open = false; });
  menu.addEventListener("keydown", e => {
    if (e.key !== "Escape" || !menu.open) return;
    menu.open = false;
    menu.querySelector("summary").focus();
  });
}

// A link to something folded opens it.
const unfold = hash => {
  const folded = hash && document.getElementById(hash.slice(1));
  if (folded?.tagName === "DETAILS") { folded.open = true; folded.querySelector("input:not([type=hidden])")?.focus(); }
};
document.querySelectorAll("a[data-open]").forEach(a => a.addEventListener("click", () => unfold(a.hash)));
addEventListener("hashchange", () => unfold(location.hash));
unfold(location.hash);

// Signature drawn by finger, pen or mouse.
for (const form of document.querySelectorAll("form[data-sign]")) {
  const box = form.querySelector("svg.draw"), path = box.querySelector("path"), kept = form.elements.strokes;
  let strokes = kept.value ? kept.value.split(";").filter(Boolean) : [], open = false;
  const show = () => {
    kept.value = strokes.join(";");
    path.setAttribute("d", strokes.map(s => "M" + s.replaceAll(",", " ").replace(/^(\S+ \S+) /, "$1L")).join(""));
  };
  const at = e => {
    const r = box.getBoundingClientRect();
    const clamp = (v, most) => Math.max(0, Math.min(most, Math.round(v)));
    return clamp(600 * (e.clientX - r.left) / r.width, 599) + "," + clamp(160 * (e.clientY - r.top) / r.height, 159);
  };
  box.addEventListener("pointerdown", e => { open = true; box.setPointerCapture(e.pointerId); strokes.push(at(e)); show(); });
  box.addEventListener("pointermove", e => {
    if (!open || kept.value.length > 15000) return;
    strokes[strokes.length - 1] += " " + at(e);
    show();
  });
  box.addEventListener("pointerup", () => { open = false; });
  form.querySelector("[data-clear]").addEventListener("click", () => { strokes = []; show(); });
  show();
}

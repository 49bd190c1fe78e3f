"use strict";
// Links that show a part, a stop or a sign change this page in place; without script they load it anew.
(() => {
  const map = document.querySelector(".map");
  if (!map) return;
  document.querySelector(".pick button").hidden = true;
  let asked = 0;

  async function go(address) {
    const mine = ++asked;
    const focus = document.activeElement && document.activeElement.getAttribute("data-part");
    let page;
    try {
      const answer = await fetch(address);
      if (!answer.ok) throw new Error();
      page = new DOMParser().parseFromString(await answer.text(), "text/html");
    } catch (e) {
      location.href = address;
      return;
    }
    if (mine !== asked) return;
    for (const id of ["side", "walk"]) document.getElementById(id).replaceWith(page.getElementById(id));
    const way = ".segments[aria-label='Map of']";
    document.querySelector(way).replaceWith(page.querySelector(way));
    const chosen = page.querySelector(".map a.chosen");
    mark(chosen && chosen.dataset.part);
    history.replaceState(null, "", address);
    document.querySelector(".pick button").hidden = true;
    if (focus) {
      const again = document.querySelector(`.views a[data-part="${CSS.escape(focus)}"]:not([tabindex])`);
      if (again && !map.contains(document.activeElement)) again.focus();
    }
  }

  function mark(part) {
    map.querySelectorAll("a.chosen").forEach(a => a.classList.remove("chosen"));
    if (!part) return;
    const a = map.querySelector(`a[data-part="${CSS.escape(part)}"]`);
    if (!a) return;
    a.classList.add("chosen");
    show(a);
  }

  function show(a) {
    const at = a.getBoundingClientRect(), box = map.getBoundingClientRect();
    if (at.left < box.left || at.right > box.right) map.scrollLeft += (at.left + at.right - box.left - box.right) / 2;
    if (at.top < box.top || at.bottom > box.bottom) map.scrollTop += (at.top + at.bottom - box.top - box.bottom) / 2;
  }

  document.addEventListener("click", e => {
    const a = e.target.closest(".map a[data-part], #side a[data-part], a.turn");
    if (!a || e.ctrlKey || e.metaKey || e.shiftKey || e.button) return;
    const address = new URL(a.getAttribute("href"), location.href);
    if (address.searchParams.get("map") !== new URL(location.href).searchParams.get("map")) return;
    e.preventDefault();
    if (a.dataset.part) mark(a.dataset.part);
    go(address.href);
  });
  document.addEventListener("change", e => {
    if (e.target.id !== "part") return;
    const address = new URL(location.href);
    for (const name of ["follow", "stop", "signs"]) address.searchParams.delete(name);
    address.searchParams.set("part", e.target.value);
    go(address.href);
  });
  const first = map.querySelector("a.chosen");
  if (first) show(first);
})();

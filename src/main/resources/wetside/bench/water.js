"use strict";
// The form works without this file, by its button; with it, what is entered and dragged shows at once.
(() => {
  const form = document.getElementById("water");
  let wait, latest = 0;
  const look = async () => {
    const turn = ++latest;
    const answer = await fetch(form.action, {method: "POST", body: new URLSearchParams(new FormData(form))});
    if (!answer.ok || turn !== latest) return;
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const here of document.querySelectorAll("[data-live]")) {
      const there = fresh.getElementById(here.id);
      if (there && here.innerHTML !== there.innerHTML) here.replaceChildren(...there.childNodes);
      const field = here.id.startsWith("err-") && document.getElementById(here.id.slice(4));
      if (field) field.setAttribute("aria-invalid", here.textContent === "" ? "false" : "true");
      if (field && here.textContent !== "") { const folded = here.closest("details"); if (folded) folded.open = true; }
    }
    again();
  };
  const again = () => { if (document.getElementById("waiting")) { clearTimeout(wait); wait = setTimeout(look, 1200); } };
  form.addEventListener("input", e => {
    if (e.target.type === "range") document.getElementById("is-" + e.target.id).textContent = e.target.value + " %";
    clearTimeout(wait);
    wait = setTimeout(look, e.target.type === "text" ? 300 : 60);
  });
  again();
})();

"use strict";
(() => {
  const print = document.getElementById("print");
  print.hidden = false;
  print.addEventListener("click", () => window.print());
  const show = document.getElementById("show");
  show.hidden = true;
  document.getElementById("who").addEventListener("change", e => e.target.form.requestSubmit(show));

  const going = document.getElementById("going");
  if (going) {
    going.querySelector(".noscript").hidden = true;
    const again = async () => {
      const answer = await fetch(location.pathname + "/progress");
      const said = await answer.text();
      if (said === "ready") return location.reload();
      document.getElementById("done").textContent = said;
      going.querySelector("progress").value = said;
      setTimeout(again, 1000);
    };
    setTimeout(again, 700);
  }

  const sign = {fine: "✓", low: "▼ low", high: "▲ high", other: "▲ other"};
  document.addEventListener("input", e => {
    const field = e.target, row = field.closest("tr");
    if (!row) return;
    let flag = "";
    const said = field.value.trim().replace(",", ".").replace("−", "-");
    if (said !== "" && field.dataset.low) {
      const v = Number(said);
      flag = Number.isNaN(v) || field.dataset.low === "NaN" ? "" : v < field.dataset.low ? "low" : v > field.dataset.high ? "high" : "fine";
      const chart = row.querySelector(".band-chart");
      if (chart && !Number.isNaN(v)) {
        const from = Number(chart.dataset.from), to = Number(chart.dataset.to);
        const x = Math.max(1.5, Math.min(148.5, 150 * (v - from) / (to - from)));
        chart.querySelector(".markline").setAttribute("d", `M${x} 4v18`);
      }
    } else if (said !== "" && field.dataset.reads) {
      flag = field.dataset.reads.split(", ").some(w => w === said || w.startsWith(said + " ")) ? "fine" : "other";
    }
    row.className = flag === "" ? "" : flag === "fine" ? "fine" : "out";
    row.querySelector(".flag").textContent = sign[flag] || "";
  });
})();

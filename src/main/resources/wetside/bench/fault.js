"use strict";
// Swaps the middle of the page where a form or link says so. Without it every answer is a form and every step a link.
(() => {
  const fault = document.getElementById("fault");
  const said = document.getElementById("said");
  const trouble = document.getElementById("trouble");
  let typing = 0;
  let latest = 0;

  const tell = (html) => {
    const page = new DOMParser().parseFromString(html, "text/html");
    const box = page.querySelector(".trouble");
    trouble.textContent = box
      ? box.querySelector("h1").textContent
      : "The bench does not answer. What you typed is still here.";
    trouble.hidden = false;
  };

  const put = (html, address, push) => {
    const open = fault.querySelector(".add[open] #seek");
    const words = open ? open.value : "";
    fault.innerHTML = html;
    if (push && address !== location.href) {
      history.pushState({}, "", address);
    }
    trouble.hidden = true;
    if (open && words && !push) {
      const add = fault.querySelector(".add");
      add.open = true;
      add.querySelector("#seek").value = words;
      seek(words);
    }
  };

  const load = async (address, options, push, speak) => {
    const mine = ++latest;
    try {
      const answer = await fetch(address, { ...options, headers: { "X-Piece": "1" } });
      const html = await answer.text();
      if (mine !== latest) {
        return;
      }
      if (!answer.ok) {
        tell(html);
        return;
      }
      put(html, answer.url, push);
      if (speak) {
        fault.dataset.tab = "step";
        const title = fault.querySelector(".title");
        const finding = fault.querySelector(".finding h2");
        said.textContent = (finding ? finding.textContent + ". " : "") + "Next step: " + (title ? title.textContent : "");
        if (title) {
          title.focus({ preventScroll: true });
        }
      }
    } catch (e) {
      tell("");
    }
  };

  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.matches("[data-swap]")) {
      return;
    }
    event.preventDefault();
    const body = new URLSearchParams(new FormData(form));
    if (event.submitter && event.submitter.name) {
      body.set(event.submitter.name, event.submitter.value);
    }
    const reading = form.querySelector("#reading");
    if (reading && !body.get("said") && !reading.value.trim()) {
      reading.focus();
      return;
    }
    load(form.action, { method: "POST", body }, true, true);
  });

  document.addEventListener("click", (event) => {
    const less = event.target.closest(".field .less, .field .more");
    if (less) {
      count(less.classList.contains("more") ? 1 : -1);
      return;
    }
    const tab = event.target.closest(".tabs a");
    if (tab) {
      event.preventDefault();
      fault.dataset.tab = tab.dataset.to;
      window.scrollTo(0, 0);
      return;
    }
    const link = event.target.closest("a[data-swap]");
    if (link && !event.ctrlKey && !event.metaKey && !event.shiftKey && event.button === 0) {
      event.preventDefault();
      load(link.href, {}, true, true);
    }
  });

  window.addEventListener("popstate", () => load(location.href, {}, false, true));

  const count = (way) => {
    const field = fault.querySelector(".field");
    const reading = field.querySelector("input");
    const step = Number(field.dataset.step);
    const now = Number(reading.value.replace(",", ".").replace("−", "-"));
    const places = (field.dataset.step.split(".")[1] || "").length;
    const next = reading.value.trim() === "" || Number.isNaN(now) ? Number(field.dataset.start) : now + way * step;
    reading.value = next.toFixed(places);
    expect();
  };

  const expect = () => {
    clearTimeout(typing);
    typing = setTimeout(async () => {
      const form = fault.querySelector("[data-expect]");
      const reading = fault.querySelector("#reading");
      if (!form || !reading) {
        return;
      }
      const address = new URL(form.dataset.expect, location.href);
      address.pathname += "/expect";
      address.searchParams.set("asked", form.elements.asked.value);
      address.searchParams.set("reading", reading.value);
      const wanted = reading.value;
      const answer = await fetch(address, { headers: { "X-Piece": "1" } });
      if (answer.status === 200 && reading.isConnected && reading.value === wanted) {
        fault.querySelector("#expect").innerHTML = await answer.text();
        const would = fault.querySelector("#expect [data-would]");
        const line = fault.querySelector("#would");
        if (would && line) {
          line.textContent = would.textContent;
          would.remove();
        }
      }
    }, 70);
  };

  const seek = (words) => {
    const parts = words.toLowerCase().split(/\s+/).filter(Boolean);
    fault.querySelectorAll(".seen li").forEach((li) => {
      const text = li.textContent.toLowerCase();
      li.hidden = !parts.every((p) => text.includes(p));
    });
  };

  document.addEventListener("input", (event) => {
    if (event.target.id === "reading") {
      expect();
    } else if (event.target.id === "seek") {
      seek(event.target.value);
    }
  });

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    const reading = fault.querySelector("#reading");
    const here = event.target;
    if (here.id === "reading" && (event.key === "ArrowUp" || event.key === "ArrowDown")) {
      event.preventDefault();
      count(event.key === "ArrowUp" ? 1 : -1);
      return;
    }
    const letter = event.key.toLowerCase();
    const words = here.matches("input:not(#reading), textarea, select");
    if (words) {
      return;
    }
    if (/^[0-9.,-]$/.test(event.key) && reading) {
      if (here !== reading) {
        reading.focus();
        reading.select();
      }
      return;
    }
    if (letter === "u") {
      const undo = fault.querySelector("#undo");
      if (undo) {
        event.preventDefault();
        undo.requestSubmit();
      }
      return;
    }
    const button = fault.querySelector(`[data-key="${CSS.escape(letter)}"]`);
    if (button) {
      event.preventDefault();
      button.click();
    } else if (event.key === "Enter" && reading && here.matches("body, .title")) {
      event.preventDefault();
      fault.querySelector(".save").click();
    }
  });

  // While not all causes have been run, what is being read aloud does not change under the eyes.
  const unmoved = (line) => {
    const form = fault.querySelector("[data-expect]");
    const address = new URL(location.href);
    if (line.dataset.first === "yes" && form && form.elements.asked.value) {
      address.searchParams.set("step", form.elements.asked.value);
    }
    return address;
  };

  // Signatures sharpen while people think: the page follows, but never under a hand that is typing.
  setInterval(async () => {
    const line = fault.querySelector("#sharpness");
    if (!line || line.dataset.ready === "yes" || document.hidden) {
      return;
    }
    const address = new URL(line.dataset.sharp, location.href);
    address.pathname += "/sharp";
    try {
      const [drawn, ready, words] = (await (await fetch(address)).text()).split("\n");
      if (!line.isConnected) {
        return;
      }
      line.textContent = words;
      const running = fault.querySelector("#running");
      if (running) {
        running.textContent = words;
      }
      const reading = fault.querySelector("#reading");
      const busy = reading && (reading.value !== reading.defaultValue || reading === document.activeElement);
      if ((drawn !== line.dataset.drawn || ready === "ready") && !busy && !fault.querySelector("details[open]")) {
        load(unmoved(line), {}, false, false);
      }
    } catch (e) {
      // it answers again or it does not; answers tell
    }
  }, 2500);
})();

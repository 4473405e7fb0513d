// Makes the paper a working sheet on a screen. Without it every box and figure is still there.
(function () {
  "use strict";
  var body = document.body;
  var key = "quoin " + location.pathname + " " + body.dataset.run + " " + body.dataset.items + " " + body.dataset.seconds;
  var state = load();
  var rows = new Map();
  var pictures = new Map();
  var checks = new Map();
  var records = new Map();

  function load() {
    try {
      return Object.assign({ items: {}, checks: {}, clocks: {}, copied: {} }, JSON.parse(localStorage.getItem(key) || "{}"));
    } catch (unreadable) {
      return { items: {}, checks: {}, clocks: {}, copied: {} };
    }
  }

  function save() {
    try {
      localStorage.setItem(key, JSON.stringify(state));
    } catch (full) {
      say("This browser does not keep the ticks");
    }
  }

  function element(name, text, parent) {
    var made = document.createElement(name);
    made.textContent = text;
    parent.append(made);
    return made;
  }

  document.querySelectorAll("tr[data-item]").forEach(function (row) { rows.set(row.dataset.item, row); });
  document.querySelectorAll("[data-picture-item]").forEach(function (slot) {
    pictures.set(slot.dataset.pictureItem, slot);
  });
  document.querySelectorAll("input[data-check]").forEach(function (box) { checks.set(box.dataset.check, box); });

  var tools = element("section", "", body);
  tools.className = "tools";
  tools.setAttribute("aria-label", "Working sheet");
  var left = element("button", "Show only what is left", tools);
  left.type = "button";
  left.setAttribute("aria-pressed", "false");
  var count = element("span", "", tools);
  count.setAttribute("role", "status");
  var startLabel = element("label", "Start ", tools);
  var start = element("input", "", startLabel);
  start.type = "time";
  var end = element("span", "", tools);
  var redo = command(tools, "redo", "line that marks the failed items again", function () {});
  var told = element("span", "", tools);
  told.setAttribute("role", "status");

  function say(text) { told.textContent = text; }

  // A line for a terminal in the run folder. The button copies it, and so does Enter in the line itself.
  function command(parent, kind, what, copied) {
    var place = element("span", "", parent);
    place.className = "command " + kind;
    var line = element("input", "", place);
    line.readOnly = true;
    line.setAttribute("aria-label", "The " + what + ", for a terminal in the run folder");
    var button = element("button", "Copy", place);
    button.type = "button";
    button.setAttribute("aria-label", "Copy the " + what);
    button.addEventListener("click", function () { copy(line, copied); });
    line.addEventListener("keydown", function (event) { if (event.key === "Enter") { copy(line, copied); } });
    return { place: place, line: line };
  }

  function copy(line, copied) {
    line.select();
    var done = function () { say("Copied: " + line.value); copied(); };
    if (navigator.clipboard) {
      navigator.clipboard.writeText(line.value).then(done, function () { say("Press Ctrl+C to copy"); });
    } else if (document.execCommand("copy")) {
      done();
    }
  }

  // Neighbours are joined, so that a line stays short: 4,9,12-14.
  function ranges(numbers) {
    numbers.sort(function (a, b) { return a - b; });
    var parts = [];
    for (var i = 0; i < numbers.length; i++) {
      var first = numbers[i];
      while (i + 1 < numbers.length && numbers[i + 1] === numbers[i] + 1) { i++; }
      parts.push(first === numbers[i] ? "" + first : first + "-" + numbers[i]);
    }
    return parts.join(",");
  }

  function paint(item) {
    var row = rows.get(item);
    var mark = state.items[item] || "";
    row.querySelectorAll("input").forEach(function (box) { box.checked = box.dataset.mark === mark; });
    row.dataset.state = mark;
    if (pictures.has(item)) { pictures.get(item).dataset.state = mark; }
  }

  function paintPlate(plate) {
    var open = plate.querySelector("tr[data-item]:not([data-state=done]):not([data-state=failed])");
    plate.classList.toggle("finished", !open);
    paintRecord(plate);
  }

  function paintRecord(plate) {
    var number = plate.dataset.plate;
    var failed = Array.from(plate.querySelectorAll("tr[data-state=failed]"), function (row) {
      return Number(row.dataset.item);
    });
    var took = elapsed(state.clocks[number] || {});
    var line = "quoin done . --plate " + number + (took > 0 ? " --took " + clockTime(took) : "")
      + (failed.length ? " --failed " + ranges(failed) : "");
    records.get(number).value = line;
    plate.classList.toggle("recorded", state.copied[number] === line);
  }

  function sum() {
    var failed = [];
    var done = 0;
    rows.forEach(function (row, item) {
      if (row.dataset.state === "done") { done++; }
      if (row.dataset.state === "failed") { failed.push(Number(item)); }
    });
    count.textContent = done + " done, " + failed.length + " failed, " + (rows.size - done - failed.length) + " left";
    redo.place.hidden = failed.length === 0;
    redo.line.value = failed.length ? "quoin reprint . --item " + ranges(failed) : "";
  }

  function expect() {
    var parts = start.value.split(":");
    if (parts.length < 2) { end.textContent = ""; return; }
    var minutes = Number(parts[0]) * 60 + Number(parts[1]) + Math.ceil(Number(body.dataset.seconds) / 60);
    var days = Math.floor(minutes / 1440);
    var clock = ("0" + Math.floor(minutes % 1440 / 60)).slice(-2) + ":" + ("0" + minutes % 60).slice(-2);
    end.textContent = "ends about " + clock + (days ? ", " + days + (days === 1 ? " day later" : " days later") : "");
  }

  body.addEventListener("change", function (event) {
    var box = event.target;
    if (box === start) {
      state.start = start.value;
      expect();
    } else if (box.dataset.check) {
      if (box.checked) { state.checks[box.dataset.check] = 1; } else { delete state.checks[box.dataset.check]; }
    } else if (box.dataset.mark) {
      var row = box.closest("tr");
      if (box.checked) { state.items[row.dataset.item] = box.dataset.mark; } else { delete state.items[row.dataset.item]; }
      paint(row.dataset.item);
      paintPlate(row.closest(".plate"));
      sum();
    }
    save();
  });

  // Arrows go from box to box in the same column.
  body.addEventListener("keydown", function (event) {
    var step = event.key === "ArrowDown" ? "nextElementSibling" : event.key === "ArrowUp" ? "previousElementSibling" : "";
    var mark = event.target.dataset && event.target.dataset.mark;
    if (!step || !mark) { return; }
    var row = event.target.closest("tr")[step];
    while (row && row.offsetParent === null) { row = row[step]; }
    if (row) { row.querySelector("[data-mark=" + mark + "]").focus(); }
    event.preventDefault();
  });

  left.addEventListener("click", function () {
    var on = body.classList.toggle("left-only");
    left.setAttribute("aria-pressed", String(on));
  });

  // A clock for each plate: seconds kept, and since when it runs.
  function elapsed(clock) {
    return Math.floor(((clock.kept || 0) + (clock.since ? Date.now() - clock.since : 0)) / 1000);
  }

  function clockTime(seconds) {
    return Math.floor(seconds / 60) + ":" + ("0" + seconds % 60).slice(-2);
  }

  var clocks = [];
  document.querySelectorAll("[data-plate]").forEach(function (plate) {
    var number = plate.dataset.plate;
    var clock = state.clocks[number] || {};
    var record = element("p", "", plate);
    record.className = "record";
    (plate.querySelector(".parts") ?? plate.querySelector(".loading")).after(record);
    records.set(number, command(record, "done", "line that records plate " + number + " as done", function () {
      state.copied[number] = records.get(number).value;
      paintRecord(plate);
      save();
    }).line);
    var line = element("p", "", plate.querySelector(".plate-facts"));
    line.className = "clock";
    var button = element("button", "", line);
    button.type = "button";
    var face = element("span", "", line);
    function tick() {
      face.textContent = " " + clockTime(elapsed(clock));
      button.textContent = (clock.since ? "Stop" : "Start") + " the clock of plate " + number;
      paintRecord(plate);
    }
    button.addEventListener("click", function () {
      clock = clock.since ? { kept: (clock.kept || 0) + Date.now() - clock.since } : { kept: clock.kept, since: Date.now() };
      state.clocks[number] = clock;
      tick();
      save();
    });
    tick();
    clocks.push(function () { if (clock.since) { tick(); } });
  });
  setInterval(function () { clocks.forEach(function (tick) { tick(); }); }, 1000);

  Object.keys(state.items).forEach(function (item) { if (rows.has(item)) { paint(item); } });
  Object.keys(state.checks).forEach(function (name) { if (checks.has(name)) { checks.get(name).checked = true; } });
  document.querySelectorAll(".plate[data-plate]").forEach(paintPlate);
  start.value = state.start || "";
  expect();
  sum();
})();

/* What somebody writes for themselves, kept on this device alone, field by field, for a whole course. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var root = document.querySelector(".mine");
  if (!root) return;
  var name = root.dataset.kept, MOST = 4000;
  var clear = root.querySelector(".clear"), printing = root.querySelector(".printing");
  var fields = Array.from(root.querySelectorAll("[data-field]"));

  function read() {
    try {
      var kept = JSON.parse(localStorage.getItem(name));
      return kept && typeof kept === "object" && !Array.isArray(kept) ? kept : {};
    } catch (blocked) {
      return {};
    }
  }
  function text(kept, field) {
    var value = kept[field];
    return typeof value === "string" ? value.slice(0, MOST) : "";
  }
  function write(field, value) {
    var kept = read();
    if (value) kept[field] = value;
    else delete kept[field];
    try {
      if (Object.keys(kept).length) localStorage.setItem(name, JSON.stringify(kept));
      else localStorage.removeItem(name);
      tell("");
    } catch (blocked) {
      tell(clear ? said().dataset.unkept : "");
    }
  }
  function said() { return clear.querySelector("[role=status]"); }
  function tell(words) { if (clear) said().textContent = words; }
  function fill() {
    var kept = read();
    fields.forEach(function (field) {
      if (field.type === "checkbox") field.checked = text(kept, field.dataset.field) === "yes";
      else field.value = text(kept, field.dataset.field);
    });
  }
  fields.forEach(function (field) {
    field.addEventListener("input", function () {
      var value = field.type === "checkbox" ? (field.checked ? "yes" : "") : field.value.slice(0, MOST);
      write(field.dataset.field, value);
    });
  });
  fill();
  window.addEventListener("pageshow", function (event) { if (event.persisted) fill(); });

  function line(tag, words) {
    var made = document.createElement(tag);
    made.textContent = words;
    return made;
  }
  function show(list) {
    var kept = read();
    [1, 2, 3].forEach(function (n) {
      var what = text(kept, "change" + n + "_what");
      if (!what) return;
      var item = line("li", what);
      [["when", list.dataset.when], ["notice", list.dataset.notice]].forEach(function (part) {
        var words = text(kept, "change" + n + "_" + part[0]);
        if (words) item.append(line("small", part[1] + ": " + words));
      });
      list.append(item);
    });
    list.hidden = !list.children.length;
    root.querySelector(".none-kept").hidden = !list.hidden;
  }
  var shown = root.querySelector(".kept-changes");
  if (shown) show(shown);

  if (printing) {
    printing.hidden = false;
    printing.firstElementChild.addEventListener("click", function () { window.print(); });
  }
  if (clear) {
    var sure = clear.querySelector(".sure");
    clear.hidden = false;
    clear.querySelector(".first").addEventListener("click", function () {
      sure.hidden = false;
      sure.focus();
    });
    sure.addEventListener("click", function () {
      try {
        localStorage.removeItem(name);
      } catch (blocked) {
        /* There is nothing to clear. */
      }
      fill();
      sure.hidden = true;
      clear.querySelector(".first").focus();
      tell(said().dataset.cleared);
      if (loom.showDays) loom.showDays();
    });
  }
  loom.mine = { read: function (field) { return text(read(), field); }, write: write, fill: fill };
})();

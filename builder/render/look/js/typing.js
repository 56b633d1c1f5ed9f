/* Typing in what stands on paper: letters for options, twice, and an answer sheet as the site would hand it over. */
(function () {
  "use strict";
  var loom = window.caseloom, data = loom.data, say = data.say, byId = document.getElementById.bind(document);
  var LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ", now = null;

  function rows() { return Array.from(document.querySelector('.typed[data-version="' + now.version + '"]').children); }
  function field(row) { return row.querySelector(".field"); }
  function typed() { return rows().map(function (row) { return field(row).value; }); }

  /* Letters as ids; undefined where one of them stands for nothing or twice for the same. */
  function picked(text, ids) {
    var letters = text.toUpperCase().replace(/[^A-Z]/g, "").split(""), found = letters.map(function (letter) {
      return ids[LETTERS.indexOf(letter)];
    });
    var once = found.every(function (id, index) { return id !== undefined && found.indexOf(id) === index; });
    return once ? found : undefined;
  }
  function single(text, asked) {
    var found = picked(text, asked.options);
    return found && found.length === 1 ? found[0] : undefined;
  }
  var READ = {
    one: single,
    panel: single,
    many: function (text, asked) {
      var found = picked(text, asked.options);
      return found && found.length ? found.sort() : undefined;
    },
    order: function (text, asked) {
      var found = picked(text, asked.options);
      return found && found.length === asked.options.length ? found : undefined;
    },
    /* A letter for each left side, in their order, a dash where there is none; numbers between may be typed along. */
    match: function (text, asked) {
      var marks = text.toUpperCase().replace(/[^A-Z-]/g, "").split(""), pairs = [];
      if (marks.length !== asked.options.length) return undefined;
      for (var i = 0; i < marks.length; i++) {
        var partner = asked.partners[LETTERS.indexOf(marks[i])];
        if (marks[i] !== "-" && partner === undefined) return undefined;
        if (partner !== undefined) pairs.push([asked.options[i], partner]);
      }
      return pairs;
    },
    number: function (text, asked) {
      var number = loom.kinds.number.meant(text, asked.unit);
      return number === null ? text : number;
    },
    text: function (text) { return text; }
  };
  function value(text, asked) {
    var plain = text.trim();
    return plain === "" || plain === "-" ? null : READ[asked.kind](plain, asked);
  }
  function values(texts) {
    return texts.map(function (text, index) { return value(text, data.papers[now.version][index]); });
  }
  function tell(row, words) {
    row.querySelector(".problem").textContent = words;
    row.classList.toggle("differs", words !== "");
    field(row).setAttribute("aria-invalid", String(words !== ""));
  }
  function kept() { return ["caseloom/typing", data.edition, now.code].join("/"); }
  function remember(gone) {
    try {
      if (gone) localStorage.removeItem(kept());
      else localStorage.setItem(kept(), JSON.stringify({ first: now.first, typed: typed() }));
    } catch (blocked) { /* Then only this page knows it. */ }
  }
  function recall() {
    try {
      return JSON.parse(localStorage.getItem(kept())) || {};
    } catch (blocked) {
      return {};
    }
  }
  function head() {
    byId("typing-title").textContent = say[now.first ? "typing_again" : "typing_pass"]
      .replace("{letter}", now.version).replace("{code}", now.code);
    byId("typing-on").textContent = say[now.compared ? "typing_saved" : now.first ? "typing_alike" : "typing_left"];
  }
  function show(texts) {
    rows().forEach(function (row, index) {
      field(row).value = (texts && texts[index]) || "";
      tell(row, "");
    });
    head();
    byId("typing-title").focus();
    field(rows()[0]).focus();
  }
  function begin(code) {
    now = { code: code, version: loom.versionOf(code), klass: byId("klass").value.trim(), started: new Date(), compared: false };
    var before = recall();
    now.first = before.first || null;
    document.querySelectorAll(".typed").forEach(function (list) { list.hidden = list.dataset.version !== now.version; });
    byId("who").hidden = true;
    byId("typing").hidden = false;
    show(before.typed);
  }
  function stop() {
    byId("typing").hidden = true;
    byId("who").hidden = false;
    byId("code").value = "";
    byId("typing-said").textContent = "";
    byId("code").focus();
  }
  /* The fields that cannot be read are told; the first of them gets the focus. */
  function readable() {
    var read = values(typed()), wrong = [];
    rows().forEach(function (row, index) {
      tell(row, read[index] === undefined ? say.typing_unreadable : "");
      if (read[index] === undefined) wrong.push(row);
    });
    if (wrong.length) field(wrong[0]).focus();
    return !wrong.length;
  }
  function compared() {
    var one = values(now.first), other = values(typed()), differ = rows().filter(function (row, index) {
      var same = JSON.stringify(one[index]) === JSON.stringify(other[index]);
      if (!same) tell(row, say.typing_differs.replace("{first}", now.first[index] || "–"));
      return !same;
    });
    now.compared = true;
    head();
    if (differ.length) field(differ[0]).focus();
    return !differ.length;
  }
  function save() {
    var answers = {}, read = values(typed()), at = loom.stamp(new Date());
    data.questions = data.papers[now.version];
    data.version = now.version;
    data.questions.forEach(function (asked, index) {
      answers[asked.q] = { value: read[index] };
      if (asked.kind === "number") answers[asked.q].typed = typed()[index];
    });
    var state = { sheet: loom.fresh(), rev: 1, "class": now.klass, started: loom.stamp(now.started), answers: answers,
      marks: { end: { at: at, rev: 1 } } };
    var item = document.createElement("li"), link = document.createElement("a");
    loom.download(link, loom.sheet(state, now.code, false), [data.test, now.version, now.code].join("-") + ".json");
    link.textContent = link.download;
    item.appendChild(link);
    byId("typing-list").appendChild(item);
    link.click();
    remember(true);
    stop();
  }
  byId("who").addEventListener("submit", function (event) {
    event.preventDefault();
    var given = byId("code").value, fault = !given.trim() ? say.code_missing : loom.isCode(given) ? "" : say.code_wrong;
    byId("code-problem").textContent = fault;
    if (fault) byId("code").focus();
    else begin(loom.tidy(given));
  });
  byId("typing").addEventListener("submit", function (event) {
    event.preventDefault();
    if (!readable()) return;
    if (now.compared) return save();
    if (now.first) return compared() ? save() : undefined;
    now.first = typed();
    remember(false);
    show(null);
  });
  byId("typing").addEventListener("input", function () { remember(false); });
  byId("typing").addEventListener("keydown", function (event) {
    if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
    var next = rows()[rows().indexOf(event.target.closest(".row")) + 1];
    if (!next) return;
    event.preventDefault();
    field(next).focus();
  });
  byId("typing-off").addEventListener("click", function () { remember(true); stop(); });
  byId("klass").value = loom.given().get("class") || "";
  byId("who").hidden = false;
})();

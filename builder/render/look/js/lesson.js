/* A practice question in a lesson: it is answered on the page, scored here, and told with its reasons.

   Nothing is kept and nothing is sent. An answer may be changed and looked at again as often as one likes. */
(function () {
  "use strict";
  var loom = window.caseloom;

  /* What was given, by the names that the lines of the answer bear. */
  function parts(value) {
    return value.flatMap(function (one, at) {
      return Array.isArray(one) ? [one.join(">")] : [one, one + "@" + (at + 1)];
    });
  }
  function same(line, given, scored) {
    if (scored.kind !== "number") return given.indexOf(line.dataset.part) >= 0;
    var typed = loom.numberOf(given[0], scored.unit), told = loom.numberOf(line.dataset.part, scored.unit);
    return typed && told && typed.n === told.n && typed.d === told.d;
  }
  function earned(scored, value) {
    var mark = scored.question.kind === "text" ? "1" : loom.score(scored.question, scored.policy, value);
    return mark === "1" ? "all" : mark === "0" ? "none" : "part";
  }
  function tell(asked, scored, value) {
    var given = parts([].concat(value)), answer = asked.querySelector("details");
    answer.querySelectorAll(".yours").forEach(function (line) {
      line.hidden = !same(line, given, scored.question);
    });
    answer.open = true;
    var found = asked.querySelector(".outcome");
    found.textContent = found.dataset[earned(scored, value)];
  }
  function clear(asked) {
    asked.querySelector(".outcome").textContent = asked.querySelector(".problem").textContent = "";
    asked.querySelectorAll(".yours").forEach(function (line) { line.hidden = true; });
  }
  function check(asked, fieldset, scored) {
    var kind = loom.kindOf(fieldset), value = kind.read(fieldset);
    if (value !== null) return tell(asked, scored, value);
    var problem = asked.querySelector(".problem");
    problem.textContent = problem.dataset.choose;
    fieldset.querySelector("input, select, textarea").focus();
  }
  document.querySelectorAll(".asked").forEach(function (asked) {
    var fieldset = asked.querySelector("fieldset"), form = asked.querySelector("form");
    var scored = JSON.parse(asked.dataset.scored);
    form.reset();
    loom.kindOf(fieldset).ready(fieldset);
    asked.querySelector(".check").hidden = false;
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      clear(asked);
      check(asked, fieldset, scored);
    });
    ["input", "change"].forEach(function (name) {
      fieldset.addEventListener(name, function () { clear(asked); });
    });
  });
})();

/* Personal codes: the same arithmetic as the tool's own. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var kept = document.getElementById("test-data");
  loom.data = kept ? JSON.parse(kept.textContent) : {};

  loom.tidy = function (typed) {
    return typed.toUpperCase().replace(/[ \-\u2010\u2011\u2013\t]/g, "");
  };
  loom.checkCharacter = function (body) {
    var alphabet = loom.data.alphabet, total = 0;
    for (var i = 0; i < body.length; i++) total += (i + 2) * alphabet.indexOf(body[i]);
    return alphabet[total % alphabet.length];
  };
  loom.isCode = function (typed) {
    var code = loom.tidy(typed), body = code.slice(0, loom.data.length);
    if (code.length !== loom.data.length + 1) return false;
    for (var i = 0; i < code.length; i++) if (loom.data.alphabet.indexOf(code[i]) < 0) return false;
    return loom.checkCharacter(body) === code[loom.data.length];
  };
  loom.versionOf = function (code) {
    var last = loom.data.alphabet.indexOf(loom.tidy(code)[loom.data.length - 1]);
    return loom.data.letters[last % loom.data.versions];
  };
  loom.given = function () {
    return new URLSearchParams(location.hash.slice(1));
  };
  /* The address of the version a code belongs to; a class named in the address goes along. */
  loom.wayTo = function (code) {
    var carried = new URLSearchParams({ code: loom.tidy(code) });
    var taught = loom.given().get("class");
    if (taught) carried.set("class", taught);
    return loom.data.pages[loom.versionOf(code)] + "#" + carried;
  };
  loom.askForCode = function () {
    var form = document.querySelector(".code-form");
    var field = document.getElementById("code"), problem = document.getElementById("code-problem");
    form.hidden = false;
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      if (loom.isCode(field.value)) {
        location.href = loom.wayTo(field.value);
        return;
      }
      problem.textContent = field.value.trim() ? loom.data.say.code_wrong : loom.data.say.code_missing;
      field.setAttribute("aria-invalid", "true");
      field.focus();
    });
  };
  if (loom.data.entry) {
    document.querySelector(".plain-versions").hidden = true;
    loom.askForCode();
  }
})();

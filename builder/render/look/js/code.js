/* Personal codes: the same arithmetic as the tool's own. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var kept = document.getElementById("test-data");
  loom.data = kept ? JSON.parse(kept.textContent) : {};

  loom.tidy = function (typed) {
    return Array.from(typed.normalize("NFKC").toUpperCase()).filter(function (letter) {
      return loom.data.between.indexOf(letter) < 0;
    }).map(function (letter) { return loom.data.alike[letter] || letter; }).join("");
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
  function wrong(typed) {
    var say = loom.data.say;
    if (!typed.trim()) return say.code_missing;
    if (!loom.isCode(typed)) return say.code_wrong;
    return loom.versionOf(typed) in loom.data.pages ? "" : say.code_elsewhere.replace("{letter}", loom.versionOf(typed));
  }
  function offerSharing() {
    var shared = document.getElementById("shared");
    if (!shared) return;
    shared.closest(".sharing").hidden = false;
    shared.checked = loom.isShared();
    shared.addEventListener("change", function () { loom.setShared(shared.checked); });
  }
  loom.askForCode = function () {
    var form = document.querySelector(".code-form");
    var field = document.getElementById("code"), problem = document.getElementById("code-problem");
    form.hidden = false;
    offerSharing();
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      var fault = wrong(field.value);
      problem.textContent = fault;
      if (!fault) {
        location.href = loom.wayTo(field.value);
        if (loom.data.alone) location.reload();
        return;
      }
      field.setAttribute("aria-invalid", "true");
      field.focus();
    });
  };
  if (!loom.data.entry) return;
  document.querySelector(".plain-versions").hidden = true;
  loom.askForCode();
})();

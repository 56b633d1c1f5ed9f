/* A short written answer, with a count of its words. */
(function () {
  "use strict";
  function field(fieldset) { return fieldset.querySelector("textarea"); }
  function count(fieldset) {
    var words = field(fieldset).value.trim().split(/\s+/).filter(Boolean).length;
    var line = fieldset.querySelector(".count");
    line.textContent = words ? line.dataset.count.replace("#", words) : "";
  }
  function read(fieldset) {
    return field(fieldset).value.trim() ? field(fieldset).value : null;
  }
  window.caseloom.kinds.text = {
    ready: function (fieldset) {
      field(fieldset).addEventListener("input", function () { count(fieldset); });
      count(fieldset);
    },
    read: read,
    put: function (fieldset, value) {
      field(fieldset).value = typeof value === "string" ? value : "";
      count(fieldset);
    },
    said: function (fieldset) { return read(fieldset) || ""; },
    whole: function (fieldset) { return read(fieldset) !== null; }
  };
})();

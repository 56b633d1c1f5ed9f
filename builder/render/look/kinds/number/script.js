/* A number in its unit: point or comma, with or without the unit. What is no number stays as it was typed. */
(function () {
  "use strict";
  var SHAPE = /^[+-]?(?:[0-9]{1,30}(?:[.][0-9]{0,30})?|[.][0-9]{1,30})$/;

  function field(fieldset) { return fieldset.querySelector("input"); }
  /* The number that was meant, with a point; null where there is none to be read. */
  function meant(typed, unit) {
    var text = typed.trim(), own = unit.trim().toLowerCase();
    if (own && text.toLowerCase().endsWith(own)) text = text.slice(0, text.length - own.length).trim();
    var plain = text.replace(/\u2212/g, "-").replace(/,/g, ".");
    return SHAPE.test(plain) ? plain.replace(/[.]$/, "") : null;
  }
  function read(fieldset) {
    var input = field(fieldset), typed = input.value.trim();
    var number = meant(typed, input.dataset.unit);
    return typed === "" ? null : number === null ? typed : number;
  }
  function readable(fieldset) {
    return read(fieldset) === null || meant(field(fieldset).value, field(fieldset).dataset.unit) !== null;
  }
  function tell(fieldset) {
    var line = fieldset.querySelector(".read");
    line.textContent = readable(fieldset) ? "" : line.dataset.none;
  }
  window.caseloom.kinds.number = {
    ready: function (fieldset) {
      field(fieldset).addEventListener("change", function () { tell(fieldset); });
      field(fieldset).addEventListener("input", function () { if (readable(fieldset)) tell(fieldset); });
    },
    read: read,
    put: function (fieldset, value) {
      field(fieldset).value = typeof value === "string" ? value : "";
      tell(fieldset);
    },
    said: function (fieldset) {
      var input = field(fieldset), value = read(fieldset);
      if (value === null) return "";
      return readable(fieldset) ? value + " " + input.dataset.unit : value;
    },
    whole: function (fieldset) { return read(fieldset) !== null && readable(fieldset); },
    typed: function (fieldset) { return field(fieldset).value; },
    meant: meant
  };
})();

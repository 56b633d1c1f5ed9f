/* What belongs to what: a list to choose from for each left side. */
(function () {
  "use strict";
  function selects(fieldset) { return Array.from(fieldset.querySelectorAll("select")); }
  function paired(fieldset) {
    return selects(fieldset).filter(function (select) { return select.value; });
  }
  window.caseloom.kinds.match = {
    ready: function () {},
    read: function (fieldset) {
      var pairs = paired(fieldset).map(function (select) { return [select.dataset.left, select.value]; });
      return pairs.length ? pairs : null;
    },
    put: function (fieldset, value) {
      var partner = new Map(Array.isArray(value) ? value.filter(Array.isArray) : []);
      selects(fieldset).forEach(function (select) {
        select.value = partner.get(select.dataset.left) || "";
        if (select.selectedIndex < 0) select.value = "";
      });
    },
    said: function (fieldset) {
      return paired(fieldset).map(function (select) {
        var left = select.parentNode.querySelector(".what").textContent;
        return left + ": " + select.options[select.selectedIndex].textContent;
      }).join("; ");
    },
    whole: function (fieldset) { return selects(fieldset).every(function (select) { return select.value; }); }
  };
})();

/* Keeping answers on this device, at every change, under a name that nothing else uses. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  loom.keeper = function (code) {
    var data = loom.data;
    var name = ["caseloom", data.edition, data.test, data.version, code].join("/");
    return {
      read: function () {
        try {
          var kept = JSON.parse(localStorage.getItem(name));
          return kept && typeof kept.answers === "object" ? kept : null;
        } catch (blocked) {
          return null;
        }
      },
      write: function (state) {
        try {
          localStorage.setItem(name, JSON.stringify(state));
          return true;
        } catch (blocked) {
          return false;
        }
      }
    };
  };
})();

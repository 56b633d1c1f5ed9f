/* Keeping answers on this device, at every change, under a name that nothing else uses. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  /* What another program or a torn write left behind is not taken for answers. */
  function whole(kept) {
    return Boolean(kept) && /^[0-9a-f]{32}$/.test(kept.sheet) && Number.isInteger(kept.rev) &&
      !isNaN(Date.parse(kept.started)) && Boolean(kept.answers) && typeof kept.answers === "object";
  }
  loom.keeper = function (code) {
    var data = loom.data;
    var name = ["caseloom", data.edition, data.test, data.version, code].join("/");
    return {
      read: function () {
        try {
          var kept = JSON.parse(localStorage.getItem(name));
          return whole(kept) ? kept : null;
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

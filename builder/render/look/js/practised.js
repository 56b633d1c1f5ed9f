/* What was decided in a practice case, kept on this device alone; where nothing can be kept, it lasts as long as the page. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});

  function sound(kept) {
    return kept && kept.answers && typeof kept.answers === "object" && Number.isInteger(kept.visit) ? kept : null;
  }
  loom.practised = function (name) {
    return {
      read: function () {
        try {
          return sound(JSON.parse(localStorage.getItem(name))) || { visit: 0, answers: {} };
        } catch (blocked) {
          return { visit: 0, answers: {} };
        }
      },
      write: function (state) {
        try {
          localStorage.setItem(name, JSON.stringify(state));
        } catch (blocked) {
          /* The page goes on without. */
        }
      },
      forget: function () {
        try {
          localStorage.removeItem(name);
        } catch (blocked) {
          /* There is nothing to forget. */
        }
      }
    };
  };
})();

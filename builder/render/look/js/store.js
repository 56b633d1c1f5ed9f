/* The two stores of this device: a quick one that writes before the next line runs, and a safe one.

   Browsers bring the quick store to the disk only seconds later; the safe one says when it is there. Each puts
   together what it is given and what it holds already, so that no window and no old state takes anything away. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var BASE = "caseloom", STORE = "answers", PATIENCE = 4000;

  function parsed(text) {
    try {
      var kept = JSON.parse(text);
      return loom.whole(kept) ? kept : null;
    } catch (torn) {
      return null;
    }
  }
  loom.quickStore = function (name) {
    return {
      read: function () {
        try {
          return parsed(localStorage.getItem(name));
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
      },
      forget: function () {
        try {
          localStorage.removeItem(name);
          return true;
        } catch (blocked) {
          return false;
        }
      }
    };
  };

  function opened() {
    return new Promise(function (done, fail) {
      var asked = indexedDB.open(BASE, 1);
      asked.onupgradeneeded = function () { asked.result.createObjectStore(STORE); };
      asked.onsuccess = function () {
        asked.result.onversionchange = function () { asked.result.close(); };
        done(asked.result);
      };
      asked.onerror = asked.onblocked = function () { fail(asked.error); };
    });
  }
  function patient(promise) {
    return new Promise(function (done, fail) {
      setTimeout(fail, PATIENCE);
      promise.then(done, fail);
    });
  }
  loom.safeStore = function (name) {
    var base = null;
    /* One piece of work in a transaction of its own; a base that was closed meanwhile is opened again. */
    function within(work) {
      base = base || opened();
      var done = base.then(function (open) {
        return new Promise(function (end, fail) {
          var deal = open.transaction(STORE, "readwrite", { durability: "strict" }), made = {};
          deal.oncomplete = function () { end(made.state); };
          deal.onabort = deal.onerror = function () { fail(deal.error); };
          work(deal.objectStore(STORE), made);
        });
      });
      done.catch(function () { base = null; });
      return patient(done);
    }
    return {
      /* Promises the state as it is kept now. */
      write: function (state) {
        return within(function (store, made) {
          var held = store.get(name);
          held.onsuccess = function () {
            made.state = loom.merge(parsed(held.result), state);
            store.put(JSON.stringify(made.state), name);
          };
        });
      },
      forget: function () {
        return within(function (store) { store.delete(name); });
      }
    };
  };
})();

/* What the address says of the person who sits here, and how it goes along from page to page. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  var CODE = "caseloom/code";

  loom.given = function () {
    return new URLSearchParams(location.hash.slice(1));
  };
  loom.isShared = function () {
    return loom.given().has("shared");
  };
  /* On a device that many use the code stays out of the address, which browsers remember. */
  function remembered(code) {
    try {
      if (code === null) sessionStorage.removeItem(CODE);
      else sessionStorage.setItem(CODE, code);
      return true;
    } catch (blocked) {
      return false;
    }
  }
  loom.forgetCode = function () { remembered(null); };
  loom.codeGiven = function () {
    var named = loom.given().get("code");
    if (named || !loom.isShared()) return loom.tidy(named || "");
    try {
      return sessionStorage.getItem(CODE) || "";
    } catch (blocked) {
      return "";
    }
  };
  function going(along) {
    var text = along.toString().replace(/=(&|$)/g, "$1");
    return text ? "#" + text : "";
  }
  /* The address of the version a code belongs to; what else the address says goes along. */
  loom.wayTo = function (code) {
    var along = loom.given(), made = new URLSearchParams();
    if (!(loom.isShared() && remembered(loom.tidy(code)))) made.set("code", loom.tidy(code));
    along.delete("code");
    along.forEach(function (value, key) { made.set(key, value); });
    return loom.data.pages[loom.versionOf(code)] + going(made);
  };
  /* The address of the entry for the next person. */
  loom.wayBack = function () {
    var along = loom.given();
    along.delete("code");
    along.delete("more");
    return loom.data.back + going(along);
  };
  loom.setShared = function (shared) {
    var along = loom.given();
    if (shared) along.set("shared", "");
    else along.delete("shared");
    history.replaceState(null, "", location.pathname + location.search + going(along));
  };
})();

/* Loads the page again when the course has changed, and remembers whether the panel is open. */
(function () {
  "use strict";
  var panel = document.querySelector(".caseloom-panel");
  if (!panel) return;
  var details = panel.querySelector("details");
  var shown = panel.getAttribute("data-version");
  var key = "caseloom-preview-panel", worst = panel.className;

  function kept() {
    try { return JSON.parse(sessionStorage.getItem(key)) || {}; } catch (error) { return {}; }
  }
  function keep() {
    try { sessionStorage.setItem(key, JSON.stringify({ worst: worst, open: details.open })); } catch (error) { return; }
  }

  var before = kept();
  if (before.worst === worst) details.open = before.open;  /* what is new opens by itself */
  keep();
  details.addEventListener("toggle", keep);

  function listen() {
    var news = new EventSource("/-/changes");
    news.onmessage = function (event) {
      if (event.data !== shown) { news.close(); location.reload(); }
    };
    news.onerror = function () { panel.classList.add("is-away"); };
    news.onopen = function () { panel.classList.remove("is-away"); };
    window.addEventListener("pagehide", function () { news.close(); });
  }
  listen();
  window.addEventListener("pageshow", function (event) { if (event.persisted) location.reload(); });
})();

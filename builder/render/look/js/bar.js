/* The bar: the menu closes on Escape, on a click beside it and when focus leaves it. */
(function () {
  "use strict";
  /* Skipping to the page leaves the address alone: a test keeps its code there. */
  document.querySelector(".skip").addEventListener("click", function (event) {
    event.preventDefault();
    document.getElementById("page").focus();
  });
  var menu = document.querySelector(".menu");
  if (!menu) return;
  function shut(focus) {
    if (!menu.open) return;
    menu.open = false;
    if (focus) menu.querySelector("summary").focus();
  }
  document.addEventListener("keydown", function (event) {
    if (event.key === "Escape") shut(menu.contains(document.activeElement));
  });
  document.addEventListener("click", function (event) {
    if (!menu.contains(event.target)) shut(false);
  });
  menu.addEventListener("focusout", function (event) {
    if (event.relatedTarget && !menu.contains(event.relatedTarget)) shut(false);
  });
  /* A table that must scroll sideways can be reached by keyboard. */
  document.querySelectorAll(".page table:not(.scroller *)").forEach(function (table) {
    var frame = document.createElement("div");
    frame.className = "scroller";
    table.parentNode.insertBefore(frame, table);
    frame.appendChild(table);
    if (frame.scrollWidth <= frame.clientWidth) return;
    frame.tabIndex = 0;
    frame.setAttribute("role", "region");
    frame.setAttribute("aria-label", table.rows[0].textContent.replace(/\s+/g, " ").trim());
  });
})();

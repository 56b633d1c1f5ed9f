/* The screen for the room: the numbers follow; where the way in has changed the page is loaded anew. */
(function () {
  "use strict";
  var counts = document.getElementById("counts");
  function again() {
    fetch("/counts").then(function (answer) { return answer.json(); }).then(function (told) {
      if (told.way !== counts.dataset.way) return location.reload();
      counts.querySelectorAll("dd").forEach(function (number, at) {
        if (number.textContent !== told.counts[at][0]) number.textContent = told.counts[at][0];
      });
    }).catch(function () {}).finally(function () { setTimeout(again, 1500); });
  }
  again();
})();

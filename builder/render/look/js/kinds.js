/* The kinds of question by name: how the fieldset of each is made ready, read, filled and told in words.

   ready(fieldset)       once, when a script begins: brings what only a script can do
   read(fieldset)        the value for an answer sheet; null while unanswered
   put(fieldset, value)  shows a value that `read` gave, null to clear; what it cannot show it leaves out
   said(fieldset)        the answer in words, for looking over; empty while unanswered
   whole(fieldset)       whether nothing is left to be answered in it
   typed(fieldset)       only where it may differ from the value: what was typed

   What a person does in a fieldset ends in a bubbling `input` or `change`, as with native controls. */
(function () {
  "use strict";
  var loom = (window.caseloom = window.caseloom || {});
  loom.kinds = {};

  loom.kindOf = function (fieldset) { return loom.kinds[fieldset.dataset.kind]; };
  loom.fieldsets = function (root) {
    return Array.from(root.querySelectorAll("fieldset[data-kind]"));
  };
  loom.changed = function (control) {
    control.dispatchEvent(new Event("change", { bubbles: true }));
  };
  /* A kind that is answered by choosing among the options of the page; a value names one of them, or several. */
  loom.choosing = function (several) {
    function chosen(fieldset) {
      return Array.from(fieldset.querySelectorAll("input:checked"));
    }
    function read(fieldset) {
      var values = chosen(fieldset).map(function (input) { return input.value; });
      if (!values.length) return null;
      return several ? values.sort() : values[0];
    }
    return {
      ready: function () {},
      read: read,
      put: function (fieldset, value) {
        var values = value === null || value === undefined ? [] : [].concat(value);
        fieldset.querySelectorAll("input").forEach(function (input) {
          input.checked = values.indexOf(input.value) >= 0;
        });
      },
      said: function (fieldset) {
        return chosen(fieldset).map(function (input) {
          return input.parentNode.querySelector("b").textContent;
        }).join("; ");
      },
      whole: function (fieldset) { return read(fieldset) !== null; }
    };
  };
})();

/* One option of several. */
window.caseloom.kinds.one = window.caseloom.choosing(false);

/* One option, as one judges; a panel was asked the same. */
window.caseloom.kinds.panel = window.caseloom.choosing(false);

/* Every option that is right. */
window.caseloom.kinds.many = window.caseloom.choosing(true);

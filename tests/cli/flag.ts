// Drawings whose numbers can be worked out by hand.

/** Two by three; the hoist two thirds white, the fly black: one line, one flag height long. */
export const halved =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#ffffff" d="M0 0h2v2H0z"/><path id="fly" fill="#000000" d="M2 0h1v2H2z"/></svg>';

export const plain =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2 1"><path fill="#ffffff" d="M0 0h2v1H0z"/></svg>';

// Floor 9. The sign of the site in a browser's tab: a disc counterchanged on a parted ground, black and white.

/** As SVG: sharp at every size. Neutral, because the flags are the only colour of a page. */
export const iconSvg =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path fill="#f7f7f7" d="M0 0h32v32H0z"/><path fill="#1a1a1a" d="M0 0h16v32H0z"/><path fill="#f7f7f7" d="M16 7a9 9 0 0 0 0 18z"/><path fill="#1a1a1a" d="M16 7a9 9 0 0 1 0 18z"/><path fill="none" stroke="#808080" d="M.5.5h31v31H.5z"/></svg>\n';

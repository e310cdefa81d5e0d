// Stands apart from the page, so that it runs where the page does not: shows at once that a file of it is missing, and
// loads again with all that the address carries, since a link holds its design there.
const stuck = () => document.documentElement.classList.add('stuck');
addEventListener(
  'error',
  ({ target }) => {
    if (target instanceof HTMLScriptElement || target instanceof HTMLLinkElement) stuck();
  },
  true,
);
// This comes after the style sheets, before the page: one that did not come has told its fault already.
if ([...document.querySelectorAll('link[rel=stylesheet]')].some(({ sheet }) => sheet === null)) stuck();
addEventListener('click', (event) => {
  if (!(event.target instanceof HTMLAnchorElement) || !event.target.closest('.waiting')) return;
  event.preventDefault();
  location.reload();
});

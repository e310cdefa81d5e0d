// Stands apart from the page, so that it runs where the page does not: shows at once that a file of it is missing, and
// loads again with all that the address carries, since a link holds its design there.
addEventListener(
  'error',
  ({ target }) => {
    if (target instanceof HTMLScriptElement || target instanceof HTMLLinkElement) {
      document.documentElement.classList.add('stuck');
    }
  },
  true,
);
addEventListener('click', (event) => {
  if (!(event.target instanceof HTMLAnchorElement) || !event.target.closest('.waiting')) return;
  event.preventDefault();
  location.reload();
});

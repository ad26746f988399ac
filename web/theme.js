// @ts-check
// Runs before the page is drawn, so that it never flashes in the wrong light. Not a module.
{
  const chosen = localStorage.getItem('hark.theme');
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  document.documentElement.dataset.theme =
    chosen === 'light' || chosen === 'dark' || chosen === 'night' ? chosen : dark ? 'dark' : 'light';
}

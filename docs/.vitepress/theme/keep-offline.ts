/**
 * Has the browser keep the whole site, once the page has what it needs itself. Where there are no service workers, as in a
 * page that is opened from a file, the site works as long as its files are there.
 * @param base the folder that the site is served from
 */
export function keepOffline(base: string): void {
  const { serviceWorker } = navigator;
  if (serviceWorker === undefined) return;
  const register = () => void serviceWorker.register(`${base}offline.js`).catch(() => {});
  if (document.readyState === "complete") register();
  else addEventListener("load", register, { once: true });
}

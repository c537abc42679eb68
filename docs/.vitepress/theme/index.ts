import type { Theme } from "vitepress";
import DefaultTheme from "vitepress/theme-without-fonts";
import { defineAsyncComponent, h } from "vue";
import { keepOffline } from "./keep-offline.js";
import NoSuchPage from "./NoSuchPage.vue";
import "./style.css";

export default {
  extends: DefaultTheme,
  Layout: () => h(DefaultTheme.Layout, null, { "not-found": () => h(NoSuchPage) }),
  enhanceApp({ app, siteData }) {
    if (!import.meta.env.SSR && import.meta.env.PROD) keepOffline(siteData.value.base);
    app.component(
      "TryFormula",
      defineAsyncComponent(() => import("./TryFormula.vue")),
    );
  },
} satisfies Theme;

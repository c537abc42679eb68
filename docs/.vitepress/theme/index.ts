import type { Theme } from "vitepress";
import DefaultTheme from "vitepress/theme-without-fonts";
import { defineAsyncComponent } from "vue";
import { keepOffline } from "./keep-offline.js";
import "./style.css";

export default {
  extends: DefaultTheme,
  enhanceApp({ app, siteData }) {
    if (!import.meta.env.SSR && import.meta.env.PROD) keepOffline(siteData.value.base);
    app.component(
      "TryFormula",
      defineAsyncComponent(() => import("./TryFormula.vue")),
    );
  },
} satisfies Theme;

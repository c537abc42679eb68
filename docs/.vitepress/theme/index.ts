import type { Theme } from "vitepress";
import DefaultTheme from "vitepress/theme-without-fonts";
import { defineAsyncComponent } from "vue";
import "./style.css";

export default {
  extends: DefaultTheme,
  enhanceApp({ app }) {
    app.component(
      "TryFormula",
      defineAsyncComponent(() => import("./TryFormula.vue")),
    );
  },
} satisfies Theme;

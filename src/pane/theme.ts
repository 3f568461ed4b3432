import {
  type BrandVariants,
  createDarkTheme,
  createLightTheme,
  type Theme,
  teamsHighContrastTheme,
} from "@fluentui/react-components";

/** Petrol green, from nearly black to nearly white; 80 is the accent on light, 120 on dark. */
const PETROL: BrandVariants = {
  10: "#02110F",
  20: "#051C1B",
  30: "#072827",
  40: "#093432",
  50: "#0A3F3D",
  60: "#0B4A47",
  70: "#0D5551",
  80: "#0E5F5B",
  90: "#2A736E",
  100: "#438782",
  110: "#579E98",
  120: "#6CC7BE",
  130: "#8BD3CC",
  140: "#A9DED9",
  150: "#C6EAE6",
  160: "#E3F5F3",
};

const FONT = '"Segoe UI", system-ui, "Open Sans", sans-serif';

/** What all themes share: the host's type, nothing under 14 px. */
const SHARED: Partial<Theme> = {
  fontFamilyBase: FONT,
  fontFamilyNumeric: FONT,
  fontSizeBase100: "14px",
  fontSizeBase200: "14px",
  lineHeightBase100: "18px",
  lineHeightBase200: "20px",
};

const DARK_ACCENT: Partial<Theme> = {
  colorBrandForeground1: PETROL[120],
  colorBrandForeground2: PETROL[120],
  colorBrandForegroundLink: PETROL[120],
  colorCompoundBrandForeground1: PETROL[120],
  colorCompoundBrandStroke: PETROL[120],
  colorNeutralForeground2BrandHover: PETROL[120],
};

/** How the host looks: light, dark, or its own high contrast. */
export type Scheme = "light" | "dark" | "high-contrast";

/** The pane's theme for each scheme. */
export const THEMES: Readonly<Record<Scheme, Theme>> = {
  light: { ...createLightTheme(PETROL), ...SHARED },
  dark: { ...createDarkTheme(PETROL), ...SHARED, ...DARK_ACCENT },
  "high-contrast": { ...teamsHighContrastTheme, ...SHARED },
};

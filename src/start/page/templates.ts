/** What the templates lack, found and put in its place: names for inputs, and no element before all others in the order of tabs. */
const MENDS: readonly (readonly [found: string | RegExp, mended: string])[] = [
  [/tabindex="1"/g, 'tabindex="0"'],
  ['t-ref="o_composer"', 't-ref="o_composer" role="textbox" aria-label="What the cell holds"'],
  [
    't-att-placeholder="props.placeholder"\n        t-on-change="save"\n        t-on-blur="onBlur"',
    `t-att-placeholder="props.placeholder"\n        t-att-aria-label="props.placeholder || 'Address or name'"\n        t-on-change="save"\n        t-on-blur="onBlur"`,
  ],
  [
    'class="o-font-size o-number-input bg-transparent border-0"',
    `class="o-font-size o-number-input bg-transparent border-0"\n          t-att-aria-label="props.title || 'Number'"`,
  ],
  [
    'class="o-grid-add-rows-input o-input mt-0 me-2"',
    'class="o-grid-add-rows-input o-input mt-0 me-2"\n        aria-label="How many rows"',
  ],
];

/** The library's templates with what a screen reader and a keyboard miss in them. */
export function mendedTemplates(templates: string): string {
  return MENDS.reduce((text, [found, mended]) => text.replace(found, mended), templates);
}
